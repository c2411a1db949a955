package org.benchleaf.app.web.walk;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;

/// What stands in the way of a sighting, in words, with moments as the shop writes them.
///
/// @param zone the shop's
record ConflictWords(Wording wording, ZoneId zone) {
    private static final List<String> MOMENTS = List.of("when", "now", "read");

    String of(Problem problem) {
        Problem told = problem;
        for (String detail : MOMENTS) {
            String value = problem.details().getOrDefault(detail, "");
            try {
                told = told.with(detail, wording.time(LocalDateTime.ofInstant(Instant.parse(value), zone)));
            } catch (DateTimeException noMoment) {
                // another detail of that name stays as it is
            }
        }
        return wording.problem(told);
    }
}
