package org.benchleaf.catalog.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;

/// Recognises what spreadsheet programs do to cells: `5-9` becomes a date, a long number a power of ten, a
/// formula an error. Asked only about cells that were refused, so that nothing right is taken for damage.
final class SpreadsheetDamage {
    private static final String MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";
    private static final Pattern DAY_MONTH =
            Pattern.compile("(\\d{1,2})[- ](" + MONTHS + ")[a-z]*\\.?", Pattern.CASE_INSENSITIVE);
    private static final Pattern MONTH_DAY =
            Pattern.compile("(" + MONTHS + ")[a-z]*\\.?[- ](\\d{1,2})", Pattern.CASE_INSENSITIVE);
    private static final Pattern ISO = Pattern.compile("(?:19|20)\\d\\d-(\\d{2})-(\\d{2})(?:[T ]00:00(?::00)?)?");
    private static final Pattern SLASHED = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(?:\\d\\d|\\d{4})");
    /// Days from 2015 to 2044, as a workbook counts them: what is left of a date whose format was lost.
    private static final Pattern SERIAL = Pattern.compile("(4[2-9]\\d{3}|5[0-2]\\d{3})(?:\\.0+)?");
    private static final LocalDate FIRST_DAY = LocalDate.of(1899, 12, 30);
    private static final Pattern POWER = Pattern.compile("\\d(?:[.,]\\d+)?E\\+\\d+", Pattern.CASE_INSENSITIVE);
    private static final Pattern ERROR = Pattern.compile("#(?:N/A|REF!|NAME\\?|VALUE!|DIV/0!|NUM!|NULL!|#+)");

    private SpreadsheetDamage() {}

    /// The problem told as damage, when it is; else as it was.
    static Problem explained(Problem refusal, String cell) {
        if (ERROR.matcher(cell).matches()) {
            return Problem.of("cell.error", cell);
        }
        if (POWER.matcher(cell).matches()) {
            return Problem.of("cell.power", cell);
        }
        return range(cell)
                .map(meant -> Problem.of("cell.date", cell).with("meant", meant))
                .orElse(refusal);
    }

    /// The range that a program took for a date: month and day in the order they were typed.
    private static Optional<String> range(String cell) {
        Matcher dayMonth = DAY_MONTH.matcher(cell);
        if (dayMonth.matches()) {
            return Optional.of(month(dayMonth.group(2)) + "-" + dayMonth.group(1));
        }
        Matcher monthDay = MONTH_DAY.matcher(cell);
        if (monthDay.matches()) {
            return Optional.of(month(monthDay.group(1)) + "-" + Integer.parseInt(monthDay.group(2)));
        }
        for (Pattern pattern : new Pattern[] {ISO, SLASHED}) {
            Matcher date = pattern.matcher(cell);
            if (date.matches()) {
                return Optional.of(Integer.parseInt(date.group(1)) + "-" + Integer.parseInt(date.group(2)));
            }
        }
        Matcher serial = SERIAL.matcher(cell);
        if (serial.matches()) {
            LocalDate day = FIRST_DAY.plusDays(Long.parseLong(serial.group(1)));
            return Optional.of(day.getMonthValue() + "-" + day.getDayOfMonth());
        }
        return Optional.empty();
    }

    private static int month(String name) {
        return MONTHS.indexOf(name.substring(0, 3).toLowerCase(java.util.Locale.ROOT)) / 4 + 1;
    }
}
