package org.benchleaf.render;

import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.PlantSheet;

/// The front door of the web: the live page of a plant as one standalone HTML5 document, without script.
///
/// Same input, same text, so that a strong ETag can be taken from it. It may be shared between threads.
public final class WebPages {
    private final ContentPack content;

    private WebPages(ContentPack content) {
        this.content = content;
    }

    public static WebPages using(ContentPack content) {
        return new WebPages(content);
    }

    /// The page that a printed code leads to.
    ///
    /// @return a whole document, UTF-8, styles inside
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public String plantPage(PlantSheet sheet, PrintStyle style) {
        throw new UnsupportedOperationException("coming with the next commit: " + content);
    }
}
