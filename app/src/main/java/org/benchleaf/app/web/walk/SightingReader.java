package org.benchleaf.app.web.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.Condition;

/// Reads a sighting as a telephone sends it. Nothing in it is believed: not even that it is one.
final class SightingReader {
    private SightingReader() {}

    /// The file of a sighting's photograph.
    static String photograph(String key) {
        return "walk-" + key + ".jpg";
    }

    /// @param who is signed in
    /// @return or `walk.unreadable` with the field that is wrong
    static Reading<Sighting> read(JsonNode sent, String who) {
        Optional<String> key = WalkJson.text(sent, "key").filter(Sighting::isKey);
        Optional<String> walk = WalkJson.text(sent.path("walk"), "key").filter(Sighting::isKey);
        Optional<Instant> started = moment(sent.path("walk"), "startedAt");
        Optional<Instant> seenAt = moment(sent, "seenAt");
        Reading<PlantKey> plant = PlantKey.read(WalkJson.text(sent, "plant").orElse(""));
        if (key.isEmpty() || walk.isEmpty() || started.isEmpty() || seenAt.isEmpty()) {
            return Reading.refused(
                    "walk.unreadable", key.isEmpty() ? "key" : walk.isEmpty() || started.isEmpty() ? "walk" : "seenAt");
        }
        for (String field : new String[] {"count", "heightCm", "item"}) {
            if (!sent.path(field).isNull() && WalkJson.number(sent, field).isEmpty() && sent.has(field)) {
                return Reading.refused("walk.unreadable", field);
            }
        }
        return plant.flatMap(known -> conditions(sent)
                .map(conditions -> new Sighting(
                        key.get(),
                        new Walk(walk.get(), who, started.get()),
                        known,
                        WalkJson.number(sent, "item"),
                        WalkJson.text(sent, "lot").filter(lot -> !lot.isBlank()),
                        WalkJson.text(sent, "place").orElse(""),
                        conditions,
                        WalkJson.number(sent, "heightCm"),
                        WalkJson.number(sent, "count"),
                        sent.path("photo").asBoolean(false) ? Optional.of(photograph(key.get())) : Optional.empty(),
                        WalkJson.text(sent, "remark")
                                .orElse("")
                                .replaceAll("\\p{Cntrl}", " ")
                                .strip(),
                        seenAt.get())));
    }

    private static Optional<Instant> moment(JsonNode node, String field) {
        try {
            return WalkJson.text(node, field).map(Instant::parse);
        } catch (DateTimeException noMoment) {
            return Optional.empty();
        }
    }

    private static Reading<Set<Condition>> conditions(JsonNode sent) {
        EnumSet<Condition> conditions = EnumSet.noneOf(Condition.class);
        for (JsonNode one : sent.path("conditions")) {
            Reading<Condition> condition = Term.read(Condition.class, one.asText());
            if (condition instanceof Reading.Refused<Condition>(Problem problem)) {
                return new Reading.Refused<>(problem);
            }
            condition.toOptional().ifPresent(conditions::add);
        }
        return Reading.of(Set.copyOf(conditions));
    }
}
