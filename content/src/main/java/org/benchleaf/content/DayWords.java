package org.benchleaf.content;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.benchleaf.shared.measure.YearWeek;

/// Days and moments as a language writes them.
final class DayWords {
    private final Wording words;

    DayWords(Wording words) {
        this.words = words;
    }

    String date(LocalDate day) {
        return DateTimeFormatter.ofPattern(words.text("date.pattern"), words.language())
                .format(day);
    }

    String shortDate(LocalDate day, int year) {
        String key = day.getYear() == year ? "date.short" : "date.short.year";
        return words.text(
                key,
                Map.of(
                        "day", Integer.toString(day.getDayOfMonth()),
                        "month", words.text("month." + day.getMonth().name()),
                        "year", Integer.toString(day.getYear())));
    }

    String time(LocalDateTime moment) {
        return DateTimeFormatter.ofPattern(words.text("time.pattern"), words.language())
                .format(moment);
    }

    String week(YearWeek week) {
        return words.text("week", Map.of("monday", date(week.monday())));
    }

    String age(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(day, today);
        if (days < 0) {
            return words.text("age.future");
        }
        return days == 0
                ? words.text("age.today")
                : days == 1
                        ? words.text("age.yesterday")
                        : words.text("age.days", Map.of("days", words.count((int) days)));
    }
}
