package org.benchleaf.render;

import java.util.Locale;
import java.util.Map;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.Report;

/// Turns a report into one HTML5 document that needs nothing beside it: no script, no picture, its style inside.
public final class ReportPages {
    private final ContentPack content;
    private final SheetTemplates templates;

    private ReportPages(ContentPack content) {
        this.content = content;
        this.templates = new SheetTemplates(content);
    }

    public static ReportPages using(ContentPack content) {
        return new ReportPages(content);
    }

    /// @param language of its words
    /// @return a whole document, UTF-8
    public String page(Report report, Locale language) {
        return templates.fill(
                "report",
                Map.of(
                        "report",
                        report,
                        "style",
                        content.text("styles/report.css"),
                        "language",
                        language.getLanguage()));
    }
}
