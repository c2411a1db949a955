package org.benchleaf.catalog.intake;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameNote;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ContainerNaming;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Turns the rows of one file into drafts of lots. A cell that says what is sold, how many and from when
/// leaves its row out when it is not understood: a promise must not rest on a guess.
final class StockRows {
    /// What stands in the week from which a lot can be taken when it can be taken already.
    private static final Set<String> READY_NOW = Set.of("now", "ready", "ready now");

    private static final Pattern AMERICAN = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4}|\\d{2})");

    private static final int MOST = 10_000_000;
    private static final int MOST_DIGITS = 12;
    private static final Currency USUAL = Currency.getInstance("USD");

    private final MappedHeadings headings;
    private final NameBook book;
    private final NameCells names;
    private final ContainerNaming containers;
    private final ReadyWeeks weeks;
    private final boolean namesLots;
    private final TextNumbers rowByLot = new TextNumbers();

    StockRows(MappedHeadings headings, NameBook book, ShopHabits habits) {
        this.containers = habits.containers();
        this.weeks = new ReadyWeeks(habits.today());
        this.namesLots = headings.has(Fields.LOT);
        this.headings = headings;
        this.book = book;
        this.names = new NameCells(book);
    }

    /// The lot that a row describes; empty when the row is left out.
    Optional<LotDraft> draft(RawRow row, RowNotes notes) {
        if (namesLots && headings.field(row, Fields.LOT).isEmpty()) {
            notes.rowLeftOut(
                    headings.heading(Fields.LOT), Problem.of("cell.empty", "").with("field", Fields.LOT));
        }
        Optional<PlantKey> key = names.key(headings.field(row, Fields.KEY), headings.heading(Fields.KEY), notes);
        Optional<PlantRecord> plant = plant(row, key, notes);
        Optional<StockSize> size = needed(row, Fields.SIZE, StockSize.read(size(row), containers), notes);
        Optional<ItemForm> form = headings.field(row, Fields.FORM).isEmpty()
                ? Optional.of(ItemForm.REGULAR)
                : needed(row, Fields.FORM, Term.read(ItemForm.class, headings.field(row, Fields.FORM)), notes);
        Optional<Integer> count = needed(row, Fields.COUNT, count(headings.field(row, Fields.COUNT)), notes);
        String from = dated(row, Fields.READY_WEEK, notes);
        Optional<YearWeek> ready = from.isEmpty() || READY_NOW.contains(from.toLowerCase(Locale.ROOT))
                ? Optional.empty()
                : needed(row, Fields.READY_WEEK, weeks.read(from, headings.heading(Fields.READY_WEEK), notes), notes);
        Optional<Money> price = wanted(row, Fields.PRICE, Money.read(headings.field(row, Fields.PRICE), USUAL), notes);
        Optional<LocalDate> seenOn = wanted(row, Fields.SEEN_ON, day(dated(row, Fields.SEEN_ON, notes)), notes);
        Optional<Gtin> gtin = gtin(row, notes);
        Set<Condition> conditions = conditions(row, notes);
        Optional<String> lot = lot(row, plant, size, form, notes);
        if (notes.isLeftOut()
                || lot.isEmpty()
                || plant.isEmpty()
                || size.isEmpty()
                || form.isEmpty()
                || count.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LotDraft(
                notes.place(),
                lot.get(),
                plant.map(PlantRecord::key),
                plant.get().name(),
                size.get(),
                form.get(),
                headings.field(row, Fields.PLACE),
                count.get(),
                ready,
                price,
                conditions,
                seenOn,
                gtin));
    }

    /// The size as written; behind the name where no column is for it: `Acer rubrum 'October Glory' #7`.
    private String size(RawRow row) {
        return headings.has(Fields.SIZE)
                ? headings.field(row, Fields.SIZE)
                : String.join(
                        " ", NameReader.read(headings.field(row, Fields.NAME)).noted(NameNote.Kind.GOODS));
    }

    private Optional<Gtin> gtin(RawRow row, RowNotes notes) {
        String cell = headings.field(row, Fields.GTIN);
        Reading<Gtin> reading = Gtin.read(cell);
        Optional<GtinCells.Repaired> repaired =
                reading.refusal().isPresent() ? GtinCells.repaired(cell) : Optional.empty();
        if (repaired.isPresent()) {
            notes.kept(headings.heading(Fields.GTIN), repaired.get().how());
            return repaired.map(GtinCells.Repaired::gtin);
        }
        return wanted(row, Fields.GTIN, reading, notes);
    }

    /// `12` where the catalog has `0012`: a spreadsheet program takes zeros away.
    private void hasItsZeros(String lot, RowNotes notes) {
        if (!lot.matches("\\d{1,9}") || book.hasLot(lot)) {
            return;
        }
        for (int length = lot.length() + 1; length <= MOST_DIGITS; length++) {
            String padded = "0".repeat(length - lot.length()) + lot;
            if (book.hasLot(padded)) {
                notes.rowLeftOut(
                        headings.heading(Fields.LOT),
                        Problem.of("lot.zeros", lot).with("other", padded));
                return;
            }
        }
    }

    /// The lot's number; where a list has none, what is sold where: the same row of next week's list is the same lot.
    private Optional<String> lot(
            RawRow row,
            Optional<PlantRecord> plant,
            Optional<StockSize> size,
            Optional<ItemForm> form,
            RowNotes notes) {
        String lot = headings.field(row, Fields.LOT);
        if (namesLots) {
            hasItsZeros(lot, notes);
        } else if (plant.isPresent() && size.isPresent() && form.isPresent()) {
            lot = Stream.of(
                            plant.get().key().text(),
                            size.get().toString(),
                            form.get() == ItemForm.REGULAR ? "" : form.get().term(),
                            headings.field(row, Fields.PLACE))
                    .filter(part -> !part.isEmpty())
                    .collect(Collectors.joining(" "));
        }
        if (lot.isEmpty()) {
            return Optional.empty();
        }
        String heading = headings.heading(namesLots ? Fields.LOT : Fields.NAME);
        rowByLot.putIfAbsent(lot, notes.row())
                .ifPresent(first -> notes.rowLeftOut(
                        heading,
                        Problem.of(
                                        namesLots ? "row.same-lot" : "row.same-goods",
                                        namesLots ? headings.field(row, Fields.LOT) : headings.field(row, Fields.NAME))
                                .with("row", Long.toString(first))));
        return Optional.of(lot);
    }

    private Optional<PlantRecord> plant(RawRow row, Optional<PlantKey> key, RowNotes notes) {
        String text = headings.field(row, Fields.NAME);
        String heading = headings.heading(Fields.NAME);
        Optional<PlantRecord> byKey = key.flatMap(book::byKey);
        if (key.isPresent() && byKey.isEmpty()) {
            notes.rowLeftOut(
                    headings.heading(Fields.KEY),
                    Problem.of("plant.missing", key.get().text()));
            return Optional.empty();
        }
        if (byKey.isPresent() && text.isEmpty()) {
            return byKey;
        }
        Optional<BotanicalName> name = names.name(text, heading, notes);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Optional<PlantRecord> byName = names.plant(name.get(), heading, notes);
        if (byKey.isPresent()) {
            if (!byName.map(PlantRecord::key).equals(key)) {
                // Key and name name two plants: nobody but a person can say which one stands in the field
                notes.rowLeftOut(
                        heading,
                        Problem.of("plant.key-and-name", text)
                                .with("key", key.map(PlantKey::text).orElse(""))
                                .with("plant", byKey.get().name().toString()));
            }
            return byKey;
        }
        if (byName.isEmpty()) {
            notes.rowLeftOut(heading, Problem.of("plant.missing", text));
        }
        return byName;
    }

    private Set<Condition> conditions(RawRow row, RowNotes notes) {
        Set<Condition> seen = EnumSet.noneOf(Condition.class);
        for (String piece : headings.field(row, Fields.CONDITION).split("[;,|]")) {
            if (!piece.isBlank()) {
                Reading<Condition> condition = Term.read(Condition.class, piece.strip());
                condition.toOptional().ifPresent(seen::add);
                condition
                        .refusal()
                        .ifPresent(problem -> notes.cellLeftOut(headings.heading(Fields.CONDITION), problem));
            }
        }
        return Set.copyOf(seen);
    }

    private static Reading<Integer> count(String cell) {
        if (cell.isEmpty()) {
            return Reading.refused("count.missing", cell);
        }
        try {
            BigDecimal number = new BigDecimal(cell.replaceAll(",(?=\\d{3}$)", ""));
            if (number.signum() < 0) {
                return Reading.refused("count.negative", cell);
            }
            return number.compareTo(BigDecimal.valueOf(MOST)) > 0
                    ? Reading.refused("count.unknown", cell)
                    : Reading.of(number.intValueExact());
        } catch (NumberFormatException | ArithmeticException notAWholeNumber) {
            return Reading.refused("count.unknown", cell);
        }
    }

    /// A cell that holds a date, one written the American way put right and told: `4/15/2027` as 2027-04-15.
    private String dated(RawRow row, String field, RowNotes notes) {
        String cell = headings.field(row, field);
        Matcher american = AMERICAN.matcher(cell);
        if (!american.matches()) {
            return cell;
        }
        String year = american.group(3);
        String date = "%s-%02d-%02d"
                .formatted(
                        year.length() == 2 ? "20" + year : year,
                        Integer.parseInt(american.group(1)),
                        Integer.parseInt(american.group(2)));
        if (day(date).refusal().isPresent()) {
            return cell; // no such day: whoever reads the cell refuses it as it stands
        }
        notes.kept(headings.heading(field), Problem.of("date.american", cell).with("meant", date));
        return date;
    }

    private static Reading<LocalDate> day(String cell) {
        try {
            return Reading.of(LocalDate.parse(cell));
        } catch (DateTimeException notADay) {
            return Reading.refused("date.unknown", cell);
        }
    }

    /// A value without which the row says too little.
    private <T> Optional<T> needed(RawRow row, String field, Reading<T> reading, RowNotes notes) {
        reading.refusal().ifPresent(problem -> notes.rowLeftOut(headings.heading(field), told(field, problem, row)));
        return reading.toOptional();
    }

    /// A value that may be absent; one that is refused is left out alone.
    private <T> Optional<T> wanted(RawRow row, String field, Reading<T> reading, RowNotes notes) {
        if (headings.field(row, field).isEmpty()) {
            return Optional.empty();
        }
        reading.refusal().ifPresent(problem -> notes.cellLeftOut(headings.heading(field), told(field, problem, row)));
        return reading.toOptional();
    }

    private Problem told(String field, Problem problem, RawRow row) {
        boolean holdsDates = field.equals(Fields.SEEN_ON) || field.equals(Fields.READY_WEEK);
        return holdsDates ? problem : SpreadsheetDamage.explained(problem, headings.field(row, field));
    }
}
