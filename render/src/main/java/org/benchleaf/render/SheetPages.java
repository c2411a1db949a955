package org.benchleaf.render;

import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.Density;
import org.benchleaf.render.view.PaperSheets;

/// Product sheets as pages: roomy where the facts are few, closer where they are many, always one page.
final class SheetPages {
    private final SheetTemplates templates;
    private final SheetFormat format;
    private final Wording words;
    private final PaperSheets sheets;

    SheetPages(SheetTemplates templates, SheetFormat format, Wording words, FontShelf shelf, PhotoShelf photos) {
        this.templates = templates;
        this.format = format;
        this.words = words;
        this.sheets = new PaperSheets(format, words, shelf, photos);
    }

    PrintPage page(PlantSheet sheet) {
        PaperSheets.Set set = sheets.set(sheet);
        Stream<Supplier<String>> versions = Density.worthTrying(
                        set.view(),
                        format.heightMm(),
                        density -> sheets.figures(density, set.aspect()).height())
                .stream()
                .map(density -> () -> fill(set, density));
        return new PrintPage(sheet.title().botanical().toString(), versions.toList(), set.drawings());
    }

    private String fill(PaperSheets.Set set, Density density) {
        return templates.fill(
                "plant-sheet",
                Map.of(
                        "sheet", set.view(),
                        "logo", set.logo(),
                        "alt", set.alternatives(),
                        "density", density.style(),
                        "figures", sheets.figures(density, set.aspect()),
                        "format", format.name().toLowerCase(Locale.ROOT),
                        "words", new TemplateWords(words),
                        "language", words.language().getLanguage()));
    }
}
