package org.benchleaf.search.need;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;

/// `by mid April`, `for the week of 12 April`, `April 12`, `ready by 2027-04-12`, `week 15`, `next week`: when it
/// must be ready.
///
/// A date without a year is the next one, counted from a week before today. `by April` means before it starts;
/// early, mid and late are taken as the 7th, 15th and 25th.
final class WeekPhrases {
    private static final int STILL_THIS_YEAR_DAYS = 7;

    private final Vocabulary words;
    private final Pattern led;
    private final Pattern dated;
    private final Pattern numbered;

    WeekPhrases(Vocabulary words) {
        this.words = words;
        String month = "(?<month>" + words.any("months") + ")\\.?";
        String day = "(?<day>\\d{1,2})(?:st|nd|rd|th)?";
        String dayAfter =
                "(?<dayafter>\\d{1,2})(?:st|nd|rd|th)?(?!\\s*(?:#|in\\b|ft|f[eo][eo]t|'|\"|cm|m\\b|-|to\\s*\\d|\\d))";
        String year = "(?:,?\\s*(?<year>20\\d\\d))?";
        String of = "(?:" + words.any("of") + "\\s+)?";
        String lead = "(?:" + words.any("by") + "|(?<on>" + words.any("on") + "))\\s+";
        String part = "(?:(?<part>" + words.any("part of month") + ")\\s+)?";
        led = Pattern.compile(
                lead + part + "(?:" + day + "\\s+" + of + ")?" + month + "(?:\\s+" + dayAfter + ")?" + year);
        dated = Pattern.compile("(?:" + day + "\\s+" + of + month + "|(?<month2>" + words.any("months") + ")\\.?\\s+"
                + dayAfter + ")" + year);
        numbered = Pattern.compile("(?:" + lead + ")?(?:(?<iso>20\\d\\d-(?:\\d\\d-\\d\\d|w\\d{1,2}))|(?:"
                + words.any("week")
                + "\\s*|w)(?<week>\\d{1,2})|(?<m>\\d{1,2})/(?<d>\\d{1,2})(?:/(?<y>20\\d\\d))?|(?<now>"
                + words.any("now") + "))");
    }

    /// The reader of a day.
    PhraseReader on(LocalDate today) {
        return (sentence, at) -> read(sentence, at, today);
    }

    private Optional<Taken> read(Sentence sentence, int at, LocalDate today) {
        return sentence.match(led, at)
                .flatMap(match -> inMonth(match, true, today).map(week -> taken(sentence, at, match, week)))
                .or(() -> sentence.match(dated, at)
                        .flatMap(match -> inMonth(match, false, today).map(week -> taken(sentence, at, match, week))))
                .or(() -> sentence.match(numbered, at)
                        .flatMap(match -> numbered(match, today).map(week -> taken(sentence, at, match, week))));
    }

    private static Taken taken(Sentence sentence, int at, Matcher match, YearWeek week) {
        return Taken.ofStock(match.end(), Taken.StockPart.by(week))
                .with(new Note("week", sentence.words(at, match.end()), week.toString()));
    }

    private Optional<YearWeek> inMonth(Matcher match, boolean led, LocalDate today) {
        String name = match.group("month") == null ? match.group("month2") : match.group("month");
        String part = led ? match.group("part") : null;
        String day = match.group("day") == null ? match.group("dayafter") : match.group("day");
        MonthSet months = words.meaning("months", name)
                .flatMap(text -> MonthSet.read(text).toOptional())
                .orElse(MonthSet.NONE);
        // a season is no date, and "for June" alone says when it flowers, not when it is wanted
        boolean vague = day == null && part == null && match.group("on") != null;
        if (months.size() != 1 || vague) {
            return Optional.empty();
        }
        Month month = months.runs().getFirst().getFirst();
        int wanted = day != null ? Integer.parseInt(day) : part == null ? 1 : partDay(part);
        return date(match.group("year"), month.getValue(), wanted, day == null, today);
    }

    private int partDay(String part) {
        return words.meaning("part of month", part.replaceAll("\\s+", " "))
                .map(Integer::valueOf)
                .orElse(1);
    }

    private Optional<YearWeek> numbered(Matcher match, LocalDate today) {
        if (match.group("iso") != null) {
            return YearWeek.read(match.group("iso")).toOptional();
        }
        if (match.group("now") != null) {
            int days = words.meaning("now", match.group("now").replaceAll("\\s+", " "))
                    .map(Integer::valueOf)
                    .orElse(0);
            return Optional.of(YearWeek.of(today.plusDays(days)));
        }
        if (match.group("m") != null) {
            return date(
                    match.group("y"),
                    Integer.parseInt(match.group("m")),
                    Integer.parseInt(match.group("d")),
                    false,
                    today);
        }
        int week = Integer.parseInt(match.group("week"));
        YearWeek now = YearWeek.of(today);
        int year = week < now.week() ? now.year() + 1 : now.year();
        return YearWeek.read(year + "-W" + week).toOptional();
    }

    /// @param clip whether a day past the month's end means its last day, as in "end of June"
    private Optional<YearWeek> date(
            @org.jspecify.annotations.Nullable String year, int month, int day, boolean clip, LocalDate today) {
        try {
            if (year != null) {
                return Optional.of(YearWeek.of(day(Integer.parseInt(year), month, day, clip)));
            }
            LocalDate date = day(today.getYear(), month, day, clip);
            boolean past = date.isBefore(today.minusDays(STILL_THIS_YEAR_DAYS));
            return Optional.of(YearWeek.of(past ? day(today.getYear() + 1, month, day, clip) : date));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static LocalDate day(int year, int month, int day, boolean clip) {
        int last = java.time.YearMonth.of(year, month).lengthOfMonth();
        return LocalDate.of(year, month, clip ? Math.min(day, last) : day);
    }
}
