package org.benchleaf.render;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.DeskFrame;

/// The front door of the pages that staff work with: a page's own part, set into the frame that all of
/// them share.
///
/// It may be shared between threads.
public final class DeskPages {
    private static final String MACROS = "desk/parts";

    private final SheetTemplates templates;
    private final Wording wording;
    private final String style;

    private DeskPages(ContentPack content, Wording wording) {
        this.templates = new SheetTemplates(content);
        this.wording = wording;
        this.style = content.text("styles/web.css") + content.text("styles/need.css") + content.text("styles/desk.css");
    }

    public static DeskPages using(ContentPack content, Wording wording) {
        return new DeskPages(content, wording);
    }

    /// One page.
    ///
    /// @param template the page's own, such as `stock` for `templates/desk/stock.ftlh`
    /// @param model what it shows; records, texts, lists
    /// @return a whole document, UTF-8, styles inside
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public String page(String template, DeskFrame frame, Map<String, ?> model) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("frame", frame);
        all.put("words", new TemplateWords(wording));
        String body = templates.fill(MACROS, "desk/" + template, all);
        return templates.fill(
                MACROS,
                "desk/frame",
                Map.of(
                        "frame",
                        frame,
                        "words",
                        new TemplateWords(wording),
                        "body",
                        body,
                        "style",
                        style,
                        "scripts",
                        List.copyOf(frame.scripts()),
                        "language",
                        wording.language().getLanguage()));
    }
}
