package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.YearWords;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PageFact;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.render.page.StockBlock;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.stock.Availability;

/// Puts a product sheet into words, for paper and for the web.
final class SheetViews {
    private static final Set<FactKind> LANDSCAPE =
            EnumSet.of(FactKind.USES, FactKind.WILDLIFE, FactKind.NATIVE_RANGE, FactKind.NATIVE_STATES);
    /// Characters in a value that fit one line of a column.
    private static final int LINE = 30;

    private final Wording words;
    private final FactWords factWords;
    /// Checks a text (field, text) and gives it as it is printed.
    private final BinaryOperator<String> checked;
    /// Whether it is read at once, as a page is.
    private final boolean live;

    /// @param checked gets the field and the text, gives the text as it is shown
    SheetViews(Wording words, BinaryOperator<String> checked) {
        this(words, checked, false);
    }

    private SheetViews(Wording words, BinaryOperator<String> checked, boolean live) {
        this.live = live;
        this.words = words;
        this.factWords = new FactWords(words);
        this.checked = checked;
    }

    /// For a page that is read at once.
    static SheetViews live(Wording words) {
        return new SheetViews(words, (field, text) -> text.strip(), true);
    }

    /// @param name set in lines for paper; empty on the web
    /// @param code side of the code in mm; 0 on the web
    SheetView view(PlantSheet sheet, TextBlock name, double code) {
        SourceMarks marks = new SourceMarks(words);
        String plain = sheet.title().botanical().toString();
        List<String> names = sheet.title().commonNames();
        List<String> others = new ArrayList<>(names.subList(Math.min(1, names.size()), names.size()));
        sheet.title().family().ifPresent(others::add);
        return new SheetView(
                words.text("sheet.title", Map.of("name", plain)),
                name,
                Typesetter.line(sheet.title().botanical(), true),
                names.isEmpty() ? "" : checked.apply("common name", names.getFirst()),
                checked.apply("common name", String.join(" · ", others)),
                sheet.whyNow().map(text -> checked.apply("selling note", text)).orElse(""),
                sheet.description()
                        .map(text -> checked.apply("description", text))
                        .orElse(""),
                YearWords.lines(sheet.year(), words).stream()
                        .map(line -> new SheetView.YearLine(line.part(), line.what()))
                        .toList(),
                columns(facts(sheet, false, marks)),
                facts(sheet, true, marks),
                sheet.cautions().stream()
                        .map(caution -> new SheetView.NoteLine(
                                checked.apply("caution", words.caution(caution.caution())),
                                marks.mark(caution.source(), false)))
                        .toList(),
                sheet.saleNotes().stream().map(note -> saleNote(note, marks)).toList(),
                sheet.stock().map(this::stock).stream().toList(),
                sheet.relatives().stream()
                        .map(relative -> new SheetView.RelativeLine(
                                words.sentence(words.term(relative.kinship())),
                                Typesetter.line(relative.other(), false),
                                relative.key().map(key -> "/p/" + key).orElse("")))
                        .toList(),
                marks.lines().stream()
                        .map(line -> checked.apply("source", line))
                        .toList(),
                notes(sheet, marks),
                code,
                sheet.link().toString(),
                sheet.link().plant().toString(),
                checked.apply("shop", sheet.shop().name()),
                checked.apply("shop", sheet.shop().addressLine()),
                sheet.photo()
                        .map(photo -> checked.apply("photo credit", words.credit(photo.credit(), photo.license())))
                        .orElse(""));
    }

    /// What the sign of inherited facts means, and that remarks are in English where the page is not.
    private String notes(PlantSheet sheet, SourceMarks marks) {
        boolean remarks = sheet.whyNow().isPresent()
                || sheet.description().isPresent()
                || sheet.cautions().stream()
                        .anyMatch(caution -> !caution.caution().how().isEmpty());
        boolean english = Locale.ENGLISH.getLanguage().equals(words.language().getLanguage());
        return Stream.of(marks.inheritedNote(), remarks && !english ? words.text("sheet.english") : "")
                .filter(note -> !note.isEmpty())
                .collect(Collectors.joining(". "));
    }

    private List<SheetView.FactLine> facts(PlantSheet sheet, boolean landscape, SourceMarks marks) {
        return sheet.facts().stream()
                .filter(fact -> LANDSCAPE.contains(fact.kind()) == landscape)
                .sorted(Comparator.comparing(PageFact::kind))
                .map(fact -> new SheetView.FactLine(
                        factWords.label(fact.kind()),
                        checked.apply(factWords.label(fact.kind()), factWords.value(fact.value())),
                        marks.mark(fact.source(), fact.inherited()),
                        others(fact, marks)))
                .toList();
    }

    /// One that says the same in the words of the page is no other one.
    private List<SheetView.NoteLine> others(PageFact fact, SourceMarks marks) {
        String shown = factWords.value(fact.value());
        return fact.others().stream()
                .filter(other -> !factWords.value(other.value()).equals(shown))
                .map(other -> new SheetView.NoteLine(
                        checked.apply(factWords.label(fact.kind()), factWords.value(other.value())),
                        marks.mark(java.util.Optional.of(other.source()), false)))
                .toList();
    }

    /// Two columns of about the same height, read down and then across.
    private static List<List<SheetView.FactLine>> columns(List<SheetView.FactLine> facts) {
        int lines = facts.stream().mapToInt(SheetViews::linesOf).sum();
        int taken = 0;
        int split = 0;
        while (split < facts.size() && taken * 2 < lines) {
            taken += linesOf(facts.get(split++));
        }
        return facts.isEmpty() ? List.of() : List.of(facts.subList(0, split), facts.subList(split, facts.size()));
    }

    private static int linesOf(SheetView.FactLine fact) {
        return 1 + fact.value().length() / LINE + fact.others().size();
    }

    private SheetView.NoteLine saleNote(SaleNote note, SourceMarks marks) {
        String text = note.kind() == RuleKind.QUARANTINE
                ? words.text("rules.quarantine", Map.of("area", words.area(note.area())))
                : standing(note);
        String remark = note.remark().isBlank()
                ? ""
                : words.text("list.comma") + note.remark().strip();
        return new SheetView.NoteLine(
                checked.apply("sale rule", text + remark), marks.mark(java.util.Optional.of(note.source()), false));
    }

    private String standing(SaleNote note) {
        String standing = words.text("standing." + note.standing().name());
        return note.since()
                .map(day -> words.text(
                        note.coming() ? "sheet.sale-note.from" : "sheet.sale-note.since",
                        Map.of("area", words.area(note.area()), "standing", standing, "date", words.date(day))))
                .orElseGet(() ->
                        words.text("sheet.sale-note", Map.of("area", words.area(note.area()), "standing", standing)));
    }

    private SheetView.StockLines stock(StockBlock stock) {
        String asOf = words.stockAsOf(stock.asOf());
        return new SheetView.StockLines(
                asOf,
                stock.items().stream().map(item -> row(item, stock)).toList(),
                words.telling().prices()
                        && stock.items().stream().anyMatch(item -> item.price().isPresent()),
                stock.items().stream().anyMatch(item -> !item.seen().isEmpty()));
    }

    /// Paper tells the day, since it is read later; a page tells how long ago it was.
    private String seen(ItemLine item, StockBlock stock) {
        String what = words.terms(item.seen());
        return item.seenOn()
                .filter(day -> !what.isEmpty())
                .map(day -> live
                        ? words.text(
                                "stock.seen-ago",
                                Map.of(
                                        "what",
                                        what,
                                        "day",
                                        words.date(day),
                                        "ago",
                                        words.age(day, stock.asOf().toLocalDate())))
                        : words.text("stock.seen-on", Map.of("what", what, "day", words.date(day))))
                .orElse(what);
    }

    private SheetView.StockRow row(ItemLine item, StockBlock stock) {
        return new SheetView.StockRow(
                words.listedSize(item.size(), item.form()),
                words.availability(item.availability()),
                seen(item, stock),
                item.next().map(next -> words.more(next.week(), next.count())).orElse(""),
                item.price().flatMap(words.telling()::price).map(words::money).orElse(""),
                item.availability() instanceof Availability.InStock);
    }
}
