package org.benchleaf.render;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.DocumentView;
import org.benchleaf.render.view.Figures;

/// Documents of many plants as pages.
final class DocumentPages {
    private DocumentPages() {}

    static Iterator<PrintPage> of(
            List<DocumentView> pages, Figures figures, SheetFormat format, SheetTemplates templates, Wording words) {
        var drawings = figures.drawings();
        Map<String, String> alternatives = figures.alternatives();
        return pages.stream()
                .map(page -> new PrintPage(
                        page.title(),
                        List.of(() -> templates.fill(
                                "document",
                                Map.of(
                                        "page",
                                        page,
                                        "alt",
                                        alternatives,
                                        "format",
                                        format.name().toLowerCase(Locale.ROOT),
                                        "words",
                                        new TemplateWords(words),
                                        "language",
                                        words.language().getLanguage()))),
                        drawings))
                .iterator();
    }
}
