package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.YearStrip;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;

/// Sets the rows of tables of plants and their items, and measures them.
final class PlantRows {
    /// Widths of columns in mm; the name has the rest.
    static final double STRIP = 30;

    static final double SIZE = 27;
    static final double NOW = 14;
    static final double LATER = 31;
    static final double LOOK = 18;
    static final double PRICE = 21;

    /// Heights in mm.
    static final double HEAD = 5;

    static final double HEADING = 11.5;
    private static final double PADDING = 2.4;
    private static final double KEY = 3.4;
    private static final double CELL = 8.6;
    private static final double LEADING = 10.8;

    private final Wording words;
    private final FontShelf shelf;
    private final Typesetter typesetter;
    private final double nameMm;
    private final int year;
    private final Figures figures;
    private final ConditionMarks marks;

    /// @param widthMm of the table
    /// @param year of the page, for dates
    /// @param figures receives strips and marks
    PlantRows(Wording words, FontShelf shelf, double widthMm, int year, Figures figures) {
        this.words = words;
        this.shelf = shelf;
        this.typesetter = new Typesetter(shelf);
        this.nameMm = widthMm - STRIP - SIZE - NOW - LATER - LOOK - PRICE;
        this.year = year;
        this.figures = figures;
        this.marks = new ConditionMarks(words, figures);
        figures.put("strip:head", YearStrip.head(YearStrip.NARROW, words));
    }

    PlantRow row(PlantItems plant) {
        String subject = plant.title().botanical().toString();
        Characters characters = new Characters(shelf, subject);
        characters.checked(subject, "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
        double measure = (nameMm - 3) / TextBlock.POINT_MM;
        TextBlock name = typesetter.set(
                Typesetter.words(plant.title().botanical(), true),
                measure,
                new TypeRange(10.5, 9.5, 7.5, 4, 1.14),
                subject,
                "name");
        TextBlock common = plant.title().commonNames().stream()
                .findFirst()
                .map(text -> flow(characters.checked(text, "common name", Face.FACTS), measure, subject))
                .orElseGet(TextBlock::none);
        String key = plant.link().plant().toString();
        String strip = "strip:" + key;
        if (!figures.has(strip)) {
            figures.put(strip, YearStrip.draw(plant.year(), YearStrip.NARROW, subject, words));
        }
        List<PlantRow.Item> items = new ArrayList<>();
        double itemsHeight = 0;
        for (ItemLine item : plant.items()) {
            PlantRow.Item set = item(item, subject);
            items.add(set);
            itemsHeight += Math.max(set.size().height(), Math.max(set.later().height(), 3.9)) + PADDING;
        }
        if (items.isEmpty()) {
            items.add(new PlantRow.Item(
                    TextBlock.none(),
                    "",
                    flow(words.text("stock.none"), (LATER - 2) / TextBlock.POINT_MM, subject),
                    List.of(),
                    ""));
            itemsHeight = items.getFirst().later().height() + PADDING;
        }
        double height = Math.max(itemsHeight, name.height() + common.height() + KEY + PADDING + 0.6);
        return new PlantRow(name, common, key, strip, items, Math.max(height, 9.5));
    }

    private PlantRow.Item item(ItemLine item, String subject) {
        return new PlantRow.Item(
                flow(words.listedSize(item.size(), item.form()), (SIZE - 2) / TextBlock.POINT_MM, subject),
                item.availability() instanceof Availability.InStock(int count) ? words.count(count) : "",
                flow(later(item), (LATER - 2) / TextBlock.POINT_MM, subject),
                marks.of(item.seen()),
                item.price().map(words::money).orElse(""));
    }

    private String later(ItemLine item) {
        return switch (item.availability()) {
            case Availability.InStock now ->
                item.next()
                        .map(next -> coming("table.more", next.week(), next.count()))
                        .orElse("");
            case Availability.From(YearWeek week, int count) -> coming("table.from", week, count);
            case Availability.SoldOut soldOut -> words.availability(soldOut);
            case Availability.Withdrawn withdrawn -> words.availability(withdrawn);
        };
    }

    private String coming(String key, YearWeek week, int count) {
        return words.text(key, Map.of("count", words.count(count), "day", words.shortDate(week.monday(), year)));
    }

    private TextBlock flow(String text, double measure, String subject) {
        return text.isBlank()
                ? TextBlock.none()
                : typesetter.flow(Typesetter.words(text, Face.FACTS), measure, CELL, LEADING, subject, "list");
    }

    List<ConditionMarks.Meaning> legend() {
        return marks.legend();
    }
}
