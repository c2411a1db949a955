package org.benchleaf.shared.measure;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// A week of a year by ISO 8601: weeks start on Monday, week 1 holds the year's first Thursday.
///
/// @param year week-based year, 2000 to 2099
/// @param week 1 to 52, or 53 in a long year
public record YearWeek(int year, int week) implements Comparable<YearWeek> {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{4})-?W(\\d{1,2})", Pattern.CASE_INSENSITIVE);

    public YearWeek {
        if (year < 2000 || year > 2099 || week < 1 || week > weeksIn(year)) {
            throw new IllegalArgumentException("week must be 2000-W01 to 2099-W53; got " + year + "-W" + week);
        }
    }

    public static YearWeek of(LocalDate day) {
        return new YearWeek(day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    /// Reads `2027-W14` or the week of a date, `2027-04-05`.
    public static Reading<YearWeek> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        try {
            return Reading.of(
                    matcher.matches()
                            ? new YearWeek(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)))
                            : of(LocalDate.parse(text.strip())));
        } catch (DateTimeException | IllegalArgumentException notAWeek) {
            return Reading.refused("week.unknown", text);
        }
    }

    private static int weeksIn(int year) {
        return (int) LocalDate.of(year, 6, 1)
                .range(IsoFields.WEEK_OF_WEEK_BASED_YEAR)
                .getMaximum();
    }

    /// The Monday on which it starts.
    public LocalDate monday() {
        return LocalDate.of(year, 1, 4)
                .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, week)
                .with(DayOfWeek.MONDAY);
    }

    @Override
    public int compareTo(YearWeek other) {
        return year != other.year ? Integer.compare(year, other.year) : Integer.compare(week, other.week);
    }

    /// `2027-W14`
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%d-W%02d", year, week);
    }
}
