package org.benchleaf.catalog.intake;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.jspecify.annotations.Nullable;

/// Turns the cells of a workbook into texts: numbers without noise, dates as year-month-day, formulas as their last
/// value.
final class WorkbookCells {
    /// A number has no more digits in a workbook; source: IEEE 754 as spreadsheet programs show it.
    private static final MathContext DIGITS = new MathContext(15);

    private static final Pattern NO_PART_OF_FORMAT = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.");
    private static final Pattern DATE = Pattern.compile("[yd]|mmm|m/|/m|h:|:m|:s", Pattern.CASE_INSENSITIVE);

    private final boolean from1904;

    /// @param from1904 whether the workbook counts days from 1904
    WorkbookCells(boolean from1904) {
        this.from1904 = from1904;
    }

    String text(Cell cell) {
        String raw = cell.getRawValue();
        if (cell.getType() == CellType.EMPTY || raw == null && cell.getValue() == null) {
            return "";
        }
        if (cell.getType() == CellType.BOOLEAN) {
            return "1".equals(raw) || "true".equalsIgnoreCase(raw) ? "yes" : "no";
        }
        if (cell.getValue() instanceof BigDecimal number) {
            return isDate(cell) ? day(number).orElseGet(() -> plain(number)) : plain(number);
        }
        Object value = cell.getValue();
        String text = value == null ? raw : value.toString();
        return text == null ? "" : text;
    }

    /// A formula's value is that of the day the file was saved.
    Optional<Problem> note(Cell cell) {
        String formula = cell.getFormula();
        if (cell.getType() != CellType.FORMULA || formula == null) {
            return Optional.empty();
        }
        return Optional.of(Problem.of("cell.formula", "=" + formula).with("taken", text(cell)));
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(DIGITS).stripTrailingZeros();
        return rounded.scale() < -20 || rounded.scale() > 40 ? rounded.toString() : rounded.toPlainString();
    }

    private static boolean isDate(Cell cell) {
        Integer id = cell.getDataFormatId();
        if (id != null
                && (id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58)) {
            return true;
        }
        return isDate(cell.getDataFormatString());
    }

    private static boolean isDate(@Nullable String format) {
        return format != null
                && !format.toLowerCase(Locale.ROOT).contains("general")
                && DATE.matcher(NO_PART_OF_FORMAT.matcher(format).replaceAll(""))
                        .find();
    }

    /// The day of a serial number, its time left out; empty where no calendar reaches.
    private Optional<String> day(BigDecimal serial) {
        try {
            long days = serial.longValue();
            LocalDate start = from1904 ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
            LocalDate day = start.plusDays(days);
            return days < 1 || day.getYear() > 9999 ? Optional.empty() : Optional.of(day.toString());
        } catch (DateTimeException | ArithmeticException beyond) {
            return Optional.empty();
        }
    }
}
