package org.benchleaf.catalog.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.YearWeek;

/// Weeks as growers write them: `2027-W14`, `wk 14`, `Week 14, 2027`. A week without a year is the next one of
/// that number, told as what it was taken for.
final class ReadyWeeks {
    private static final Pattern WRITTEN =
            Pattern.compile("(?:w|wk|week)\\.? ?#?(\\d{1,2})(?:[ ,/-]+(20\\d{2}))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern YEAR_FIRST =
            Pattern.compile("(20\\d{2})[ ,/-]+(?:w|wk|week)\\.? ?#?(\\d{1,2})", Pattern.CASE_INSENSITIVE);

    private final Optional<LocalDate> today;

    ReadyWeeks(Optional<LocalDate> today) {
        this.today = today;
    }

    /// @param notes hears of a year that was filled in
    Reading<YearWeek> read(String cell, String heading, RowNotes notes) {
        Matcher matcher = WRITTEN.matcher(cell);
        if (!matcher.matches()) {
            Matcher yearFirst = YEAR_FIRST.matcher(cell);
            return yearFirst.matches() ? week(yearFirst.group(1), yearFirst.group(2)) : YearWeek.read(cell);
        }
        if (matcher.group(2) != null) {
            return week(matcher.group(2), matcher.group(1));
        }
        Optional<YearWeek> next = today.flatMap(day -> next(YearWeek.of(day), Integer.parseInt(matcher.group(1))));
        next.ifPresent(week -> notes.kept(heading, Problem.of("week.year", cell).with("meant", week.toString())));
        return next.map(Reading::of).orElseGet(() -> Reading.refused("week.unknown", cell));
    }

    private static Reading<YearWeek> week(String year, String week) {
        return YearWeek.read(year + "-W" + week);
    }

    /// The first week of this number that is not over.
    private static Optional<YearWeek> next(YearWeek now, int week) {
        for (int year = now.year(); year <= now.year() + 1; year++) {
            Optional<YearWeek> candidate = YearWeek.read(year + "-W" + week).toOptional();
            if (candidate.filter(found -> found.compareTo(now) >= 0).isPresent()) {
                return candidate;
            }
        }
        return Optional.empty();
    }
}
