package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeRow;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PageFact;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;

/// Sets plants side by side: figures on top, then what differs, then what they have in common.
public final class ComparisonViews {
    private static final double LABEL = 34;
    private static final double FIGURE = 46;
    private static final double STAND = 40;
    private static final double TYPE = 8.8;
    /// Tried where they save a page: a few rows alone on the last one are better set closer.
    private static final List<Double> SMALLER = List.of(8.4, 8.0);

    /// What the style sheet puts between them, in mm.
    private static final double BETWEEN = 7.7;

    private static final double CREDIT = 3.4;
    private static final double HEAD_PADDING = 1.2;
    private static final double ROW_PADDING = 1.92;

    private final Wording words;
    private final FactWords factWords;
    private final FontShelf shelf;
    private final PhotoShelf photos;
    private final PageFrame frame;
    private final Figures figures;

    /// @param frame of its pages
    /// @param figures receives the drawings
    public ComparisonViews(PageFrame frame, Wording words, FontShelf shelf, PhotoShelf photos, Figures figures) {
        this.words = words;
        this.factWords = new FactWords(words);
        this.shelf = shelf;
        this.photos = photos;
        this.frame = frame;
        this.figures = figures;
    }

    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public List<DocumentView> pages(Comparison comparison) {
        return DocumentMaker.fewest(TYPE, SMALLER, type -> pages(comparison, type));
    }

    private List<DocumentView> pages(Comparison comparison, double type) {
        List<PlantSheet> plants = comparison.plants();
        double column = (frame.width() - LABEL) / plants.size();
        DocumentMaker maker =
                new DocumentMaker(words, shelf, photos, frame, 0, false, DocumentMaker.TITLE_ALONE, figures);
        side(plants, column - 4, maker);
        List<DocumentView.ComparedRow> differs = new ArrayList<>();
        List<DocumentView.ComparedRow> agrees = new ArrayList<>();
        differs.add(row(words.text("comparison.cautions"), cautions(plants), column - 3, type));
        facts(plants).forEach((kind, values) -> {
            boolean same = new HashSet<>(values).size() == 1;
            if (same) {
                agrees.add(row(factWords.label(kind), List.of(values.getFirst()), frame.width() - LABEL - 2, type));
            } else {
                differs.add(row(factWords.label(kind), values, column - 3, type));
            }
        });
        if (plants.stream().anyMatch(plant -> plant.stock().isPresent())) {
            differs.add(row(words.text("comparison.stock"), stock(plants), column - 3, type));
        }
        List<TextBlock> heads = heads(plants, column - 3);
        maker.table(words.text("comparison.differs"), heads, tallest(heads) + HEAD_PADDING, differs);
        if (agrees.isEmpty()) {
            Texts texts = new Texts(shelf, comparison.shop().name());
            TextBlock none =
                    texts.flow(words.text("comparison.agrees.none"), "note", Face.FACTS, frame.width(), TYPE, 1.25);
            maker.add(new DocumentView.Text(List.of(none)), none.height() + 6);
        }
        maker.table(words.text("comparison.agrees"), List.of(), 0, agrees);
        return maker.pages(words.text("comparison.title"), "", comparison.shop());
    }

    private void side(List<PlantSheet> plants, double width, DocumentMaker maker) {
        List<DocumentView.SideCell> cells = new ArrayList<>();
        for (PlantSheet plant : plants) {
            cells.add(cell(plant, cells.size(), width));
        }
        double names = cells.stream()
                .mapToDouble(cell -> cell.name().height() + cell.common().height() + 4)
                .max()
                .orElse(0);
        double reasons =
                cells.stream().mapToDouble(cell -> cell.reason().height()).max().orElse(0);
        double credit = cells.stream().allMatch(cell -> cell.credit().isEmpty()) ? 0 : CREDIT;
        // a ring is as high as it is wide
        double figure = plants.stream()
                .mapToDouble(plant -> plant.photo().isPresent() ? FIGURE : Math.min(FIGURE, width))
                .max()
                .orElse(0);
        double height = names + figure + credit + reasons + STAND + BETWEEN;
        figures.put(
                "figure:stands",
                SizeRow.draw(
                        plants.stream()
                                .map(plant -> new SizeRow.Plant(
                                        plant.title().botanical().toString(), plant.size()))
                                .toList(),
                        LABEL / TextBlock.POINT_MM,
                        (width + 4) / TextBlock.POINT_MM,
                        STAND / TextBlock.POINT_MM,
                        words));
        maker.add(new DocumentView.Side(round(width), cells, "figure:stands", round(frame.width())), height);
    }

    private DocumentView.SideCell cell(PlantSheet plant, int place, double width) {
        String subject = plant.title().botanical().toString();
        Texts texts = new Texts(shelf, subject);
        String figure = "figure:side" + place;
        double figureWidth = plant.photo().isPresent() ? width : Math.min(FIGURE, width);
        if (plant.photo().isPresent()) {
            figures.put(
                    figure,
                    photos.fill(
                            plant.photo().get().file(),
                            subject,
                            width / TextBlock.POINT_MM,
                            FIGURE / TextBlock.POINT_MM),
                    words.text("photo.alt", Map.of("name", subject)));
        } else {
            figures.put(figure, YearRing.draw(plant.year(), subject, words));
        }
        return new DocumentView.SideCell(
                texts.name(plant.title().botanical(), width, new TypeRange(15, 12, 9, 5, 1.1)),
                texts.flow(
                        plant.title().commonNames().stream().findFirst().orElse(""),
                        "common name",
                        Face.FACTS,
                        width,
                        9.5,
                        1.2),
                texts.flow(plant.whyNow().orElse(""), "selling note", Face.NAMES_ITALIC, width, 10, 1.22),
                figure,
                round(figureWidth),
                plant.link().plant().toString(),
                plant.photo()
                        .map(photo ->
                                texts.checked(words.credit(photo.credit(), photo.license()), "credit", Face.FACTS))
                        .orElse(""));
    }

    private List<TextBlock> heads(List<PlantSheet> plants, double width) {
        return plants.stream()
                .map(plant -> new Texts(shelf, plant.title().botanical().toString())
                        .name(plant.title().botanical(), width, new TypeRange(9, 7, 6, 3, 1.12)))
                .toList();
    }

    /// Every fact that any of them has, one value a plant.
    private Map<FactKind, List<String>> facts(List<PlantSheet> plants) {
        Map<FactKind, List<String>> facts = new EnumMap<>(FactKind.class);
        for (FactKind kind : FactKind.values()) {
            List<String> values = plants.stream()
                    .map(plant -> plant.facts().stream()
                            .filter(fact -> fact.kind() == kind)
                            .findFirst()
                            .map(this::value)
                            .orElseGet(() -> words.text("comparison.unknown")))
                    .toList();
            boolean known =
                    plants.stream().anyMatch(plant -> plant.facts().stream().anyMatch(fact -> fact.kind() == kind));
            if (known) {
                facts.put(kind, values);
            }
        }
        return facts;
    }

    private String value(PageFact fact) {
        return factWords.value(fact.value()) + (fact.inherited() ? words.text("sheet.inherited-mark") : "");
    }

    private List<String> cautions(List<PlantSheet> plants) {
        return plants.stream()
                .map(plant -> plant.cautions().isEmpty()
                        ? words.text("comparison.cautions.none")
                        : plant.cautions().stream()
                                .map(caution -> words.caution(caution.caution()))
                                .collect(Collectors.joining("; ")))
                .toList();
    }

    private List<String> stock(List<PlantSheet> plants) {
        return plants.stream()
                .map(plant -> plant.stock()
                        .map(stock -> stock.items().stream().map(this::offer).collect(Collectors.joining("; ")))
                        .filter(text -> !text.isEmpty())
                        .orElseGet(() -> words.text("stock.none")))
                .toList();
    }

    private String offer(ItemLine item) {
        return words.size(item.size(), item.form())
                + ": "
                + words.availability(item.availability())
                + item.price()
                        .map(price -> words.text("list.comma") + words.money(price))
                        .orElse("");
    }

    private DocumentView.ComparedRow row(String label, List<String> values, double width, double type) {
        Texts texts = new Texts(shelf, label);
        TextBlock head = texts.flow(label, "fact", Face.FACTS, LABEL - 3, type - 0.6, 1.22);
        List<TextBlock> set = values.stream()
                .map(value -> texts.flow(value, label, Face.FACTS, width, type, 1.25))
                .toList();
        return new DocumentView.ComparedRow(head, set, Math.max(tallest(set), head.height()) + ROW_PADDING);
    }

    private static double tallest(List<TextBlock> blocks) {
        return blocks.stream().mapToDouble(TextBlock::height).max().orElse(0);
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
