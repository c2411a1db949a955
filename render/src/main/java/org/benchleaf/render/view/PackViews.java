package org.benchleaf.render.view;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.figure.YearShows;
import org.benchleaf.render.figure.YearStrip;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.shared.measure.MonthSet;

/// Sets the pages of a plant list pack that stand before its sheets: the cover, the list, the chart of twelve months.
public final class PackViews {
    private static final double NUMBER = 9;
    private static final double SIZE = 32;
    private static final double COUNT = 15;
    private static final double MONEY = 22;
    private static final double NOTE = 36;
    private static final double CHART = 12 * YearStrip.WIDE * TextBlock.POINT_MM;
    private static final int PICTURES = 6;
    private static final int ACROSS = 3;

    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;
    private final PageFrame frame;
    private final Figures figures;

    /// @param figures receives the drawings
    public PackViews(SheetFormat format, Wording words, FontShelf shelf, PhotoShelf photos, Figures figures) {
        this.words = words;
        this.shelf = shelf;
        this.photos = photos;
        this.frame = PageFrame.of(format);
        this.figures = figures;
    }

    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public List<DocumentView> pages(ListPack pack) {
        DocumentMaker maker = new DocumentMaker(words, shelf, frame, pack.day().getYear(), false, figures);
        maker.add(cover(pack), frame.height() - DocumentMaker.TITLE - 2);
        maker.turn();
        maker.table(
                words.text("pack.list"),
                List.of(),
                8,
                pack.lines().stream().map(this::listed).toList());
        sums(pack, maker);
        chart(pack, maker);
        return maker.pages(words.text("pack.title"), pack.name(), pack.shop());
    }

    private DocumentView.Cover cover(ListPack pack) {
        Texts texts = new Texts(shelf, pack.name());
        String name = texts.checked(pack.name(), "name", Face.NAMES_STRONG);
        List<DocumentView.Pair> facts = new ArrayList<>();
        int plants = pack.lines().stream().mapToInt(ListPack.Line::quantity).sum();
        facts.add(new DocumentView.Pair(
                words.text("pack.list"),
                words.text(
                        "pack.cover",
                        Map.of(
                                "count", words.count(plants),
                                "lines", words.count(pack.lines().size())))));
        ListPack.Site site = pack.site();
        pair(facts, "pack.zone", site.zone().map(Object::toString));
        pair(facts, "pack.light", site.light().map(words::term));
        pair(facts, "pack.soil", site.soil().map(words::term));
        pair(facts, "pack.to", site.to());
        pair(facts, "pack.by", site.by().map(words::week));
        if (!pack.totals().isEmpty()) {
            pair(
                    facts,
                    "pack.total",
                    Optional.of(pack.totals().stream().map(words::money).collect(Collectors.joining(" + "))));
        }
        List<List<String>> pictures = pictures(pack);
        return new DocumentView.Cover(
                new Typesetter(shelf)
                        .set(
                                Typesetter.words(name, Face.NAMES_STRONG),
                                frame.widthPt(),
                                new TypeRange(44, 30, 20, 3, 1.08),
                                name,
                                "name"),
                facts,
                pictures,
                pictureWidth(),
                words.text("pack.day", Map.of("day", words.date(pack.day()))));
    }

    private static void pair(List<DocumentView.Pair> facts, String label, Wording words, Optional<String> value) {
        value.ifPresent(text -> facts.add(new DocumentView.Pair(words.text(label), text)));
    }

    private void pair(List<DocumentView.Pair> facts, String label, Optional<String> value) {
        pair(facts, label, words, value);
    }

    private double pictureWidth() {
        return Math.round((frame.width() - (ACROSS - 1) * 6) / ACROSS * 1000) / 1000.0;
    }

    /// The first plants of the pack, as photographs or rings.
    private List<List<String>> pictures(ListPack pack) {
        List<String> keys = new ArrayList<>();
        double side = pictureWidth() / TextBlock.POINT_MM;
        for (PlantSheet sheet : pack.sheets()) {
            if (keys.size() == PICTURES) {
                break;
            }
            String subject = sheet.title().botanical().toString();
            String key = "figure:cover" + keys.size();
            sheet.photo()
                    .ifPresentOrElse(
                            photo -> figures.put(
                                    key,
                                    photos.fill(photo.file(), subject, side, side),
                                    words.text("photo.alt", Map.of("name", subject))),
                            () -> figures.put(key, YearRing.draw(sheet.year(), subject, words)));
            keys.add(key);
        }
        List<List<String>> rows = new ArrayList<>();
        for (int from = 0; from < keys.size(); from += ACROSS) {
            rows.add(keys.subList(from, Math.min(keys.size(), from + ACROSS)));
        }
        return rows;
    }

    private DocumentView.ListedRow listed(ListPack.Line line) {
        double measure = frame.width() - NUMBER - SIZE - COUNT - 2 * MONEY - NOTE - 3;
        Optional<PlantItems> plant = line.plant();
        String subject =
                plant.map(known -> known.title().botanical().toString()).orElseGet(() -> words.text("pack.gone"));
        Texts texts = new Texts(shelf, subject);
        TextBlock name = plant.map(
                        known -> texts.name(known.title().botanical(), measure, new TypeRange(10.5, 9.5, 7.5, 4, 1.14)))
                .orElseGet(() -> texts.flow(subject, "name", Face.FACTS_ITALIC, measure, 9, 1.25));
        TextBlock common = texts.flow(
                plant.flatMap(known -> known.title().commonNames().stream().findFirst())
                        .orElse(""),
                "common name",
                Face.FACTS,
                measure,
                8.6,
                1.25);
        TextBlock size = texts.flow(
                line.size().map(one -> words.size(one, line.form())).orElse(""),
                "size",
                Face.FACTS,
                SIZE - 2,
                8.6,
                1.25);
        TextBlock note = texts.flow(
                Stream.of(
                                line.missing() > 0
                                        ? words.text("pack.short", Map.of("missing", words.count(line.missing())))
                                        : "",
                                line.worked(),
                                line.note())
                        .filter(part -> !part.isBlank())
                        .collect(Collectors.joining("; ")),
                "note",
                Face.FACTS,
                NOTE - 3,
                8,
                1.25);
        double height = Math.max(Math.max(name.height() + common.height(), size.height()), note.height()) + 2.6;
        return new DocumentView.ListedRow(
                words.count(line.number()),
                name,
                common,
                size,
                words.count(line.quantity()),
                line.each().map(words::money).orElse(""),
                line.total().map(words::money).orElse(""),
                note,
                Math.max(height, 7));
    }

    private void sums(ListPack pack, DocumentMaker maker) {
        Texts texts = new Texts(shelf, pack.name());
        List<TextBlock> lines = new ArrayList<>();
        pack.totals()
                .forEach(total -> lines.add(texts.flow(
                        words.text("pack.total") + " " + words.money(total),
                        "total",
                        Face.FACTS_STRONG,
                        frame.width(),
                        11,
                        1.3)));
        long unpriced =
                pack.lines().stream().filter(line -> line.total().isEmpty()).count();
        if (unpriced > 0) {
            lines.add(texts.flow(
                    words.text("pack.unpriced", Map.of("count", words.count(unpriced))),
                    "total",
                    Face.FACTS,
                    frame.width(),
                    9,
                    1.3));
        }
        if (!lines.isEmpty()) {
            maker.add(new DocumentView.Text(lines), Texts.height(lines) + 6);
        }
    }

    private void chart(ListPack pack, DocumentMaker maker) {
        List<DocumentView.ChartRow> rows = new ArrayList<>();
        java.util.Set<String> charted = new java.util.HashSet<>();
        int bits = 0;
        for (ListPack.Line line : pack.lines()) {
            if (line.plant().isEmpty()) {
                continue;
            }
            PlantItems plant = line.plant().get();
            String key = "chart:" + plant.link().plant();
            bits |= YearShows.months(plant.year()).bits();
            if (charted.add(key)) {
                rows.add(chartRow(plant, key));
            }
        }
        figures.put("chart:head", YearStrip.head(YearStrip.WIDE, words));
        maker.table(words.text("pack.year"), List.of(), 6, rows);
        Texts texts = new Texts(shelf, pack.name());
        TextBlock told = texts.flow(bare(new MonthSet(bits)), "months", Face.FACTS, frame.width(), 9.5, 1.3);
        maker.add(new DocumentView.Text(List.of(told)), told.height() + 6);
    }

    private DocumentView.ChartRow chartRow(PlantItems plant, String key) {
        String subject = plant.title().botanical().toString();
        figures.put(key, YearStrip.draw(plant.year(), YearStrip.WIDE, subject, words));
        TextBlock name = new Texts(shelf, subject)
                .name(plant.title().botanical(), frame.width() - CHART - 5, new TypeRange(10, 9, 7.5, 3, 1.14));
        return new DocumentView.ChartRow(name, key, Math.max(name.height(), 6.8) + 2.6);
    }

    private String bare(MonthSet shown) {
        if (shown.isEmpty()) {
            return words.text("pack.year.unknown");
        }
        int bits = 0;
        for (Month month : Month.values()) {
            bits |= shown.contains(month) ? 0 : 1 << month.ordinal();
        }
        MonthSet missing = new MonthSet(bits);
        return missing.isEmpty()
                ? words.text("pack.year.all")
                : words.text("pack.year.bare", Map.of("months", words.months(missing)));
    }
}
