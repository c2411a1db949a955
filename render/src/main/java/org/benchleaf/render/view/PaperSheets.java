package org.benchleaf.render.view;

import java.util.LinkedHashMap;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.LazyDrawing;

/// Sets product sheets for paper: name, code and the pair of figures.
public final class PaperSheets {
    private static final double POINT_MM = 25.4 / 72;
    private static final double MARGIN = 17;
    private static final double CODE = 27;
    private static final double BETWEEN = 9;

    private final SheetFormat format;
    private final Wording words;
    private final FontShelf shelf;

    public PaperSheets(SheetFormat format, Wording words, FontShelf shelf) {
        this.format = format;
        this.words = words;
        this.shelf = shelf;
    }

    /// A sheet and its drawings.
    public record Set(SheetView view, Map<String, Drawing> drawings) {}

    /// Width in mm that is left for the size stand beside the ring.
    public double standMm(Density density) {
        return format.widthMm() - 2 * MARGIN - density.ringMm() - BETWEEN;
    }

    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public Set set(PlantSheet sheet) {
        String subject = sheet.title().botanical().toString();
        Characters characters = new Characters(shelf, subject);
        characters.checked(subject, "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
        sheet.relatives()
                .forEach(relative ->
                        characters.checked(relative.other().toString(), "relative", Face.NAMES, Face.NAMES_ITALIC));
        double inner = format.widthMm() - 2 * MARGIN;
        CodeImage code = CodeImage.of(sheet.link());
        CodeDrawing drawn = new CodeDrawing(
                code, code.dotsThatFit(CODE).orElseThrow(() -> LabelViews.codeTooSmall(code, CODE, subject)));
        TextBlock name = new Typesetter(shelf)
                .set(
                        Typesetter.words(sheet.title().botanical(), true),
                        (inner - CODE - 3) / POINT_MM,
                        new TypeRange(34, 26, 20, 3, 1.07),
                        subject,
                        "name");
        SheetViews views = new SheetViews(
                words,
                (field, text) -> field.equals("selling note")
                        ? characters.checked(text, field, Face.NAMES_ITALIC)
                        : characters.checked(text, field, Face.FACTS, Face.FACTS_STRONG));
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        drawings.put("figure:code", drawn);
        drawings.put("figure:ring", new FigureDrawing(YearRing.draw(sheet.year(), subject, words)));
        for (Density density : Density.values()) {
            double height = density.ringMm() / POINT_MM;
            double width = standMm(density) / POINT_MM;
            drawings.put(
                    "figure:stand-" + density.style(),
                    new LazyDrawing(width, height, () -> SizeStand.draw(sheet.size(), subject, width, height, words)));
        }
        drawings.put("figure:caution", new FigureDrawing(Icons.caution(words.text("sheet.cautions"))));
        return new Set(views.view(sheet, name, drawn.width() * POINT_MM), drawings);
    }
}
