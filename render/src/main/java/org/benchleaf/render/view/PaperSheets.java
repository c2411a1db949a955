package org.benchleaf.render.view;

import java.util.Map;
import java.util.OptionalDouble;
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
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.picture.Logo;

/// Sets product sheets for paper: name, code and the pair of figures.
public final class PaperSheets {
    private static final double POINT_MM = 25.4 / 72;
    private static final double MARGIN = 17;
    private static final double CODE = 27;
    private static final double LOGO_WIDTH = 31;
    private static final double LOGO_HEIGHT = 11;

    private final SheetFormat format;
    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;

    public PaperSheets(SheetFormat format, Wording words, FontShelf shelf, PhotoShelf photos) {
        this.photos = photos;
        this.format = format;
        this.words = words;
        this.shelf = shelf;
    }

    /// A sheet and its drawings.
    ///
    /// @param alternatives words by the `src` of the drawings
    /// @param aspect width by height of its photograph, when it has one
    /// @param logo width of the shop's logo in mm; 0 when it has none
    public record Set(
            SheetView view,
            Map<String, Drawing> drawings,
            Map<String, String> alternatives,
            OptionalDouble aspect,
            double logo) {}

    private double logo(Logo shown, PlantSheet sheet, Figures set) {
        double width = shown.widthIn(LOGO_WIDTH, LOGO_HEIGHT);
        set.put(
                "figure:logo",
                photos.logo(shown, width / POINT_MM),
                sheet.shop().name());
        return Math.round(width * 1000) / 1000.0;
    }

    /// Where the figures of a sheet stand.
    ///
    /// @param aspect of the photograph, when there is one
    public SheetFigures figures(Density density, OptionalDouble aspect) {
        double inner = format.widthMm() - 2 * MARGIN;
        return aspect.isPresent()
                ? SheetFigures.withPhoto(density, inner, aspect.getAsDouble())
                : SheetFigures.alone(density, inner);
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
        Figures set = new Figures();
        set.put(
                "figure:code",
                drawn,
                words.text("code.alternative", Map.of("link", sheet.link().toString())));
        set.put("figure:ring", YearRing.draw(sheet.year(), subject, words));
        OptionalDouble aspect = sheet.photo().stream()
                .mapToDouble(photo -> photos.aspect(photo.file(), subject))
                .findFirst();
        for (Density density : Density.values()) {
            SheetFigures figures = figures(density, aspect);
            double height = figures.standHeight() / POINT_MM;
            double width = figures.stand() / POINT_MM;
            sheet.photo()
                    .ifPresent(photo -> set.put(
                            "figure:photo-" + density.style(),
                            photos.fill(
                                    photo.file(),
                                    subject,
                                    figures.photoWidth() / POINT_MM,
                                    figures.photoHeight() / POINT_MM),
                            words.text("photo.alt", Map.of("name", subject))));
            set.put(
                    "figure:stand-" + density.style(),
                    width,
                    height,
                    () -> SizeStand.draw(sheet.size(), subject, width, height, words),
                    SizeStand.alternative(sheet.size(), width, words));
        }
        double logo = sheet.shop().logo().map(shown -> logo(shown, sheet, set)).orElse(0.0);
        set.put("figure:caution", Icons.caution(words.text("sheet.cautions")));
        return new Set(
                views.view(sheet, name, drawn.width() * POINT_MM), set.drawings(), set.alternatives(), aspect, logo);
    }
}
