package org.benchleaf.app.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;

/// Reads times of the shop's own day.
final class Moments {
    private Moments() {}

    /// `2026-12-01T17:00`; a day alone means its beginning.
    static Instant read(String text, ZoneId zone) {
        return read(text, zone, 0);
    }

    /// `2026-12-01T17:00`; a day alone means its end, as "until Tuesday" does.
    static Instant end(String text, ZoneId zone) {
        return read(text, zone, 1);
    }

    private static Instant read(String text, ZoneId zone, int daysOn) {
        String time = text.strip().replace(' ', 'T');
        try {
            return time.contains("T")
                    ? LocalDateTime.parse(time).atZone(zone).toInstant()
                    : LocalDate.parse(time).plusDays(daysOn).atStartOfDay(zone).toInstant();
        } catch (DateTimeException unread) {
            throw new Refusal(Problem.of("moment.unknown", text));
        }
    }
}
