package org.benchleaf.app.web.staff;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.accounts.AuditLine;
import org.benchleaf.shared.code.PlantKey;

/// What staff changed of a plant's facts, as the log has it.
final class PlantHistory {
    private static final int MOST = 30;
    private static final String ARROW = " → ";

    private final Benchleaf benchleaf;

    PlantHistory(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
    }

    /// How a change stands in the log: from, to, and who states it.
    static String entry(PlantKey plant, String attribute, String from, String to, String source) {
        return plant + " " + attribute.replace('_', ' ') + ": " + (from.isEmpty() ? "-" : from) + ARROW + to + " ("
                + source + ")";
    }

    public record Row(String when, String who, String what) {}

    /// The newest changes, newest first.
    List<Row> of(PlantKey plant) {
        return Stream.concat(
                        benchleaf.accounts().log("fact.changed", plant + " ", MOST).stream(),
                        benchleaf.accounts().log("import.undone", PlantDesk.EDITED + plant + " ", MOST).stream())
                .sorted(Comparator.comparingLong(AuditLine::number).reversed())
                .limit(MOST)
                .map(line -> row(line, plant))
                .toList();
    }

    private Row row(AuditLine line, PlantKey plant) {
        String about = line.about();
        String text = about.startsWith(plant + " ")
                ? about.substring(plant.toString().length() + 1)
                : benchleaf.wording().text("audit." + line.act()) + ": "
                        + about.replaceFirst("^" + PlantDesk.EDITED + plant + " ", "")
                                .replaceFirst("\\.csv$", "")
                                .replace('_', ' ');
        return new Row(
                benchleaf.wording().time(LocalDateTime.ofInstant(line.at(), benchleaf.zone())),
                line.actor().who(),
                text);
    }
}
