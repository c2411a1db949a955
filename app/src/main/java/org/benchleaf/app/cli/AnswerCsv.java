package org.benchleaf.app.cli;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;

/// Answers as comma separated values (RFC 4180), one line a plant.
final class AnswerCsv {
    private final Wording wording;

    AnswerCsv(Wording wording) {
        this.wording = wording;
    }

    String headings() {
        return "need,place,key,name,common_name,met,missed,unknown,stock,as_of";
    }

    /// @param asOf when stock was looked at, by the shop's clock
    List<String> lines(String sentence, int skip, NeedAnswer answer, YearWeek now, LocalDateTime asOf) {
        return IntStream.range(0, answer.matches().size())
                .mapToObj(at -> line(sentence, skip + at + 1, answer.matches().get(at), now, asOf))
                .toList();
    }

    private String line(String sentence, int place, Match match, YearWeek now, LocalDateTime asOf) {
        return row(
                sentence,
                Integer.toString(place),
                match.plant().key().text(),
                match.plant().name().toString(),
                match.plant().commonName(wording.language()).orElse(""),
                reasons(match, Reason.Met.class),
                reasons(match, Reason.Missed.class),
                reasons(match, Reason.Unknown.class),
                new AnswerText(wording).stock(match.stock(), now),
                asOf.truncatedTo(ChronoUnit.SECONDS).toString());
    }

    static String row(String... cells) {
        return Stream.of(cells).map(AnswerCsv::cell).collect(Collectors.joining(","));
    }

    String reasons(Match match, Class<? extends Reason> kind) {
        return match.fit().reasons().stream()
                .filter(kind::isInstance)
                .map(wording::reason)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /// A cell that a spreadsheet program must not take for a formula begins with an apostrophe.
    private static String cell(String text) {
        String safe = text.matches("(?s)[=+@\\t\\r-].*") ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
