package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.code.BarsImage;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.pdf.BarsDrawing;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.Gtin;

/// Sets labels in the cells of stock paper: the code at the left, the words beside it, on tall ones the names above it,
/// in sizes that follow the cell.
public final class LabelViews {
    private static final double POINT_MM = 25.4 / 72;
    /// The label in mm for which the sizes of type are made.
    private static final double USUAL_HEIGHT = 25.4;

    private static final double USUAL_WIDTH = 60;
    /// From this height in mm on the names stand above the code and not beside it, which would leave holes.
    private static final double TALL = 60;

    private static final double TALL_WIDTH = 45;

    /// Height of bars with their digits: lower than the nominal 25.9 mm, as labels of plants are; common practice, no
    /// source.
    private static final double BARS_MM = 13;

    private static final double LEAST_BARS_MM = 9;

    private final LabelRun run;
    private final Wording words;
    private final FontShelf shelf;
    private final Typesetter typesetter;

    public LabelViews(LabelRun run, Wording words, FontShelf shelf) {
        this.run = run;
        this.words = words;
        this.shelf = shelf;
        this.typesetter = new Typesetter(shelf);
    }

    /// @throws PrintRefused when something does not fit or cannot be printed
    public LabelView set(Label label) {
        StockPaper paper = run.paper();
        String subject = label.title().botanical()
                + label.lot()
                        .map(lot -> " (" + words.text("label.lot", Map.of("lot", lot)) + ")")
                        .orElse("");
        Characters characters = new Characters(shelf, subject);
        characters.checked(label.title().botanical().toString(), "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
        double w = paper.labelWidth();
        double h = paper.labelHeight();
        boolean tall = h >= TALL;
        double scale = tall
                ? Math.clamp(Math.min(h / USUAL_HEIGHT, w / TALL_WIDTH), 0.72, 3)
                : Math.clamp(Math.min(h / USUAL_HEIGHT, w / USUAL_WIDTH), 0.72, 1.9);
        // narrow and low labels give the code what they have; its quiet zone is part of it
        boolean narrow = w < 62;
        double box =
                tall ? Math.min(h * 0.42, w * 0.5) : Math.min(h - (h < 20 ? 0.15 : 2.4), w * (narrow ? 0.42 : 0.36));
        CodeImage code = CodeImage.of(
                label.link(), label.trade(), run.outdoors() ? CodeImage.Damage.MUCH : CodeImage.Damage.SOME);
        CodeDrawing drawn = new CodeDrawing(
                code, code.dotsThatFit(box, run.dpi()).orElseThrow(() -> codeTooSmall(code, box, subject)), run.dpi());
        double side = drawn.width() * POINT_MM;
        double codeLeft = Math.max(0.5, Math.min(1.4 * scale, w * 0.02));
        double textLeft = codeLeft + side + 0.2;
        double measure = w - textLeft - 2.6 * scale;
        double codeTop = tall ? h - side - 0.6 * scale : (h - side) / 2;
        // aligned with the dark of the code, whose quiet zone is white
        double nameLeft = tall ? codeLeft + 4 * side / code.sideInModules() : textLeft;
        double nameMeasure = tall ? w - nameLeft - 2.6 * scale : measure;

        TextBlock wished = label.title().commonNames().stream()
                .findFirst()
                .map(text -> text(
                        characters,
                        text,
                        "common name",
                        Face.FACTS,
                        nameMeasure,
                        range(7.6, narrow ? 7 : 6, 6, 2, 1.2, scale),
                        subject))
                .orElseGet(TextBlock::none);
        TextBlock size = label.size()
                .map(stock -> text(
                        characters,
                        words.size(stock, label.form()),
                        "size",
                        Face.FACTS_STRONG,
                        measure * 0.66,
                        range(12, 8, 6.5, 2, 1.05, scale),
                        subject))
                .orElseGet(TextBlock::none);
        TextBlock place = label.place()
                .map(where -> text(
                        characters,
                        where,
                        "row",
                        Face.FACTS_STRONG,
                        measure * 0.34,
                        range(9.5, 7, 6, 1, 1.1, scale),
                        subject))
                .orElseGet(TextBlock::none);
        String details = details(label);
        TextBlock detail = details.isEmpty()
                ? TextBlock.none()
                : text(characters, details, "lot", Face.FACTS, measure, range(7, 6, 6, 2, 1.2, scale), subject);

        List<LabelView.Bars> bars = bars(label, textLeft, measure, h - 1.2, subject);
        double bottom = bars.isEmpty() ? h - 1.9 * scale : bars.getFirst().top() - 0.6;
        double detailTop = bottom - detail.height();
        double sizeTop = detailTop - Math.max(size.height(), place.height()) - (detail.isEmpty() ? 0 : 0.2);
        double nameTop = 1.9 * scale;
        double room = (tall ? Math.min(sizeTop, codeTop) : sizeTop) - nameTop;
        TextBlock common = wished;
        TextBlock name;
        try {
            name = name(label, nameMeasure, room - common.height(), scale, subject);
        } catch (PrintRefused crowded) {
            // on the smallest labels the name that people say gives way to the one that is sure
            common = TextBlock.none();
            name = name(label, nameMeasure, room, scale, subject);
        }
        double commonTop = nameTop + name.height() + 0.3;
        return new LabelView(
                w,
                h,
                drawn,
                round(codeLeft),
                round(codeTop),
                round(side),
                round(nameLeft),
                round(textLeft),
                round(measure),
                round(nameTop),
                name,
                round(commonTop),
                common,
                round(sizeTop),
                size,
                round(sizeTop + size.height() - place.height() + lastBaseline(place) - lastBaseline(size)),
                place,
                round(detailTop),
                detail,
                bars);
    }

    /// The bars of a till stand under the words.
    private List<LabelView.Bars> bars(Label label, double left, double measure, double bottom, String subject) {
        if (!run.bars() || label.gtin().isEmpty()) {
            return List.of();
        }
        Gtin gtin = label.gtin().get();
        if (!BarsImage.canBe(gtin)) {
            throw new PrintRefused(Problem.of("print.bars-none", gtin.toString())
                    .with("name", subject)
                    .with("field", "bars"));
        }
        double tall = Math.min(BARS_MM, run.paper().labelHeight() * 0.4);
        BarsDrawing drawing = new BarsDrawing(BarsImage.of(gtin), tall / POINT_MM, run.dpi());
        double width = drawing.width() * POINT_MM;
        if (width > measure || tall < LEAST_BARS_MM) {
            throw new PrintRefused(Problem.of("print.bars-too-small", gtin.toString())
                    .with("name", subject)
                    .with("field", "bars")
                    .with("width", String.format(Locale.ROOT, "%.1f", width))
                    .with("room", String.format(Locale.ROOT, "%.1f", measure)));
        }
        return List.of(new LabelView.Bars(drawing, round(left), round(bottom - tall), round(width)));
    }

    /// The name in the largest type that leaves room for the rest: on up to three lines, or smaller on two.
    private TextBlock name(Label label, double measureMm, double heightMm, double scale, String subject) {
        PrintRefused refusal = null;
        for (TypeRange range : List.of(range(10.5, 9.4, 7.5, 3, 1.06, scale), range(10.5, 8, 5.8, 2, 1.06, scale))) {
            try {
                TextBlock name = typesetter.set(
                        Typesetter.words(label.title().botanical(), true),
                        measureMm / POINT_MM,
                        range,
                        subject,
                        "name");
                if (name.height() <= heightMm) {
                    return name;
                }
                refusal = new PrintRefused(
                        Problem.of("print.overflow", label.title().botanical().toString())
                                .with("name", subject)
                                .with("field", "name")
                                .with("least", String.format(Locale.ROOT, "%.1f", range.least())));
            } catch (PrintRefused tooLong) {
                refusal = tooLong;
            }
        }
        throw java.util.Objects.requireNonNull(refusal);
    }

    /// How far the lower edge of a block of facts lies under its last baseline, in mm.
    private double lastBaseline(TextBlock block) {
        return (block.leading() / 2 - block.size() * shelf.baselineUnderMiddle(Face.FACTS_STRONG)) * POINT_MM;
    }

    private String details(Label label) {
        List<String> details = new ArrayList<>();
        label.lot().ifPresent(lot -> details.add(words.text("label.lot", Map.of("lot", lot))));
        label.price().ifPresent(price -> details.add(words.money(price)));
        label.pounds()
                .ifPresent(pounds -> details.add(words.text("label.weight", Map.of("pounds", words.count(pounds)))));
        return String.join(" · ", details);
    }

    private TextBlock text(
            Characters characters,
            String text,
            String field,
            Face face,
            double measureMm,
            TypeRange range,
            String subject) {
        String clean = characters.checked(text, field, face);
        return clean.isEmpty()
                ? TextBlock.none()
                : typesetter.set(Typesetter.words(clean, face), measureMm / POINT_MM, range, subject, field);
    }

    private static TypeRange range(
            double largest, double oneLine, double least, int lines, double leading, double scale) {
        double smallest = Math.max(5.5, least * Math.min(1, scale));
        return new TypeRange(
                Math.max(smallest, largest * scale), Math.max(smallest, oneLine * scale), smallest, lines, leading);
    }

    static PrintRefused codeTooSmall(CodeImage code, double boxMm, String subject) {
        return new PrintRefused(Problem.of("print.code-too-small", subject)
                .with("name", subject)
                .with("module", String.format(Locale.ROOT, "%.2f", code.moduleMm(boxMm)))
                .with("least", String.format(Locale.ROOT, "%.2f", CodeImage.leastModuleMm())));
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
