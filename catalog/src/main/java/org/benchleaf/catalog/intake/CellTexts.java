package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.ZoneRange;

/// Puts cells into the catalog's words as a column map says: units, words, cases.
final class CellTexts {
    /// The unit of a lowest temperature in °F.
    static final String LOWEST_F = "lowest F";

    /// What a column's unit may be.
    static final List<String> UNITS = List.of("ft", "in", "m", "cm", LOWEST_F);

    private CellTexts() {}

    static boolean isUnit(String unit) {
        return UNITS.contains(unit);
    }

    /// @param cell the text under a heading
    static CellText of(Column column, Function<String, String> cell) {
        List<String> cells = column.headings().stream().map(cell).toList();
        if (cells.stream().allMatch(String::isBlank)) {
            return new CellText.Absent();
        }
        String read = cells.stream().filter(text -> !text.isBlank()).collect(Collectors.joining("; "));
        if (!column.cases().isEmpty()) {
            return byCases(column, cell, read);
        }
        if (cells.size() > 1 && cells.stream().anyMatch(String::isBlank)) {
            return new CellText.Unclear(
                    Problem.of("cell.half", read).with("headings", String.join(", ", column.headings())));
        }
        String joined = String.join(column.join(), cells);
        if (!column.words().isEmpty()) {
            return byWords(column, joined);
        }
        return column.unit().map(unit -> byUnit(unit, joined)).orElseGet(() -> new CellText.Stated(read, joined));
    }

    private static CellText byCases(Column column, Function<String, String> cell, String read) {
        List<ColumnCase> holding =
                column.cases().stream().filter(each -> each.holds(cell)).toList();
        if (holding.isEmpty()) {
            return new CellText.Unclear(
                    Problem.of("cell.no-case", read).with("headings", String.join(", ", column.headings())));
        }
        String text = holding.stream()
                .limit(column.everyCase() ? holding.size() : 1)
                .map(ColumnCase::value)
                .filter(value -> !value.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
        return text.isEmpty() ? new CellText.Absent() : new CellText.Stated(read, text);
    }

    private static CellText byWords(Column column, String read) {
        Optional<String> text = column.words().entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(read))
                .map(Map.Entry::getValue)
                .findFirst();
        if (text.isEmpty()) {
            return new CellText.Unclear(Problem.of("term.unknown", read)
                    .with(
                            "accepted",
                            String.join(", ", new TreeSet<>(column.words().keySet()))));
        }
        return text.get().isEmpty() ? new CellText.Absent() : new CellText.Stated(read, text.get());
    }

    private static CellText byUnit(String unit, String read) {
        Reading<String> text = unit.equals(LOWEST_F)
                ? zone(read)
                : LengthRange.read(read, unit).map(LengthRange::toString);
        return switch (text) {
            case Reading.Read<String>(String value) -> new CellText.Stated(read, value);
            case Reading.Refused<String>(Problem problem) -> new CellText.Unclear(problem);
        };
    }

    /// The half zone of a lowest temperature, its warm end open. A plant that bears more cold than the map's coldest
    /// zone has lives there too.
    private static Reading<String> zone(String read) {
        try {
            double fahrenheit = Double.parseDouble(read);
            double coldest = new HardinessZone(0).minimumFahrenheit();
            return HardinessZone.atFahrenheit(Math.max(coldest, fahrenheit))
                    .<Reading<String>>map(
                            zone -> Reading.of(ZoneRange.andWarmer(zone).toString()))
                    .orElseGet(() -> Reading.refused("temperature.unknown", read));
        } catch (NumberFormatException notANumber) {
            return Reading.refused("temperature.unknown", read);
        }
    }
}
