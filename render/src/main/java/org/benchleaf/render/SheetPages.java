package org.benchleaf.render;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.PaperSheets;

/// Product sheets as pages: roomy where the facts are few, closer where they are many, always one page.
final class SheetPages {
    private static final List<String> DENSITIES = List.of("roomy", "usual", "close", "tight");

    private final SheetTemplates templates;
    private final SheetFormat format;
    private final Wording words;
    private final PaperSheets sheets;

    SheetPages(SheetTemplates templates, SheetFormat format, Wording words, FontShelf shelf) {
        this.templates = templates;
        this.format = format;
        this.words = words;
        this.sheets = new PaperSheets(format, words, shelf);
    }

    PrintPage page(PlantSheet sheet) {
        PaperSheets.Set set = sheets.set(sheet);
        Stream<Supplier<String>> versions = DENSITIES.stream()
                .map(density -> () -> templates.fill(
                        "plant-sheet",
                        Map.of(
                                "sheet", set.view(),
                                "density", density,
                                "format", format.name().toLowerCase(Locale.ROOT),
                                "words", new TemplateWords(words),
                                "language", words.language().getLanguage())));
        return new PrintPage(sheet.title().botanical().toString(), versions.toList(), set.drawings());
    }
}
