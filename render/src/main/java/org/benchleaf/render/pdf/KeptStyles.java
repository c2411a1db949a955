package org.benchleaf.render.pdf;

import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.extend.UserAgentCallback;

/// Keeps the style sheets of a print from page to page. The engine reads them anew for each document, and here each
/// page is one; they cannot change while a print goes on.
final class KeptStyles extends StyleReference {
    KeptStyles(UserAgentCallback resources) {
        super(resources);
    }

    /// Called for each page. What a page says for itself has a key of its own and leaves when others come.
    @Override
    public void flushAllStyleSheets() {}
}
