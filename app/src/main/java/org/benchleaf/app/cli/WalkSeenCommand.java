package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.LengthRange;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "seen",
        mixinStandardHelpOptions = true,
        description = "What was seen in the rows lately, the newest first. Exit code 1: something is in conflict with"
                + " the stock.")
final class WalkSeenCommand extends WorkspaceCommand {
    private static final int MOST = 10_000;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "14",
            description = "of so many days (default: ${DEFAULT-VALUE})")
    private int days;

    @Option(names = "--conflicts", description = "only what is in conflict with the stock, however old")
    private boolean conflicts;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    WalkSeenCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<NotedSighting> seen = conflicts ? benchleaf.walks().conflicts() : lately(benchleaf, days);
        if (json) {
            ObjectNode answer = Json.object();
            ArrayNode all = answer.putArray("seen");
            seen.forEach(noted -> write(all.addObject(), noted, benchleaf));
            console().out().println(Json.text(answer));
        } else if (seen.isEmpty()) {
            console().out().println(benchleaf.wording().text("seen.nothing"));
        } else {
            seen.forEach(noted -> console().out().println(line(noted, benchleaf)));
        }
        return seen.stream().anyMatch(NotedSighting::isInConflict) ? ErrorReport.FINDINGS : ErrorReport.DONE;
    }

    /// What was seen in the last days.
    static List<NotedSighting> lately(Benchleaf benchleaf, int days) {
        if (days < 1 || days > 3650) {
            throw new Refusal(Problem.of("walk.days", Integer.toString(days)));
        }
        Instant from =
                benchleaf.today().minusDays(days).atStartOfDay(benchleaf.zone()).toInstant();
        return benchleaf.walks().seenSince(from, MOST);
    }

    private static String name(Sighting seen, Benchleaf benchleaf) {
        return benchleaf
                .catalog()
                .plant(seen.plant())
                .map(plant -> plant.name().toString())
                .orElse(seen.plant().text());
    }

    private static void write(ObjectNode node, NotedSighting noted, Benchleaf benchleaf) {
        Sighting seen = noted.sighting();
        node.put("key", seen.key())
                .put("walk", seen.walk().key())
                .put("plant", seen.plant().text())
                .put("name", name(seen, benchleaf));
        seen.lot().ifPresent(lot -> node.put("lot", lot));
        if (!seen.place().isEmpty()) {
            node.put("place", seen.place());
        }
        ArrayNode looks = node.putArray("conditions");
        seen.conditions().stream().sorted().forEach(condition -> looks.add(condition.term()));
        seen.count().ifPresent(count -> node.put("count", count));
        seen.heightCm().ifPresent(cm -> node.put("heightCm", cm));
        seen.photo().ifPresent(file -> node.put("photo", file));
        node.put("remark", seen.remark())
                .put("who", seen.who())
                .put("seenAt", seen.seenAt().toString())
                .put("receivedAt", noted.receivedAt().toString())
                .put("inConflict", noted.isInConflict());
        conflict(noted, benchleaf.wording()).ifPresent(text -> node.put("conflict", text));
    }

    private static Optional<String> conflict(NotedSighting noted, Wording words) {
        return noted.standing() instanceof Standing.InConflict(Problem problem)
                ? Optional.of(words.problem(problem))
                : Optional.empty();
    }

    private static String line(NotedSighting noted, Benchleaf benchleaf) {
        Sighting seen = noted.sighting();
        Wording words = benchleaf.wording();
        List<String> parts = new ArrayList<>();
        if (!seen.conditions().isEmpty()) {
            parts.add(words.terms(seen.conditions()));
        }
        seen.count().ifPresent(count -> parts.add(words.text("sightings.count", Map.of("count", words.count(count)))));
        seen.heightCm()
                .ifPresent(cm -> parts.add(
                        words.text("sightings.height", Map.of("height", words.length(new LengthRange(cm, cm))))));
        if (!seen.remark().isBlank()) {
            parts.add(seen.remark());
        }
        conflict(noted, words).ifPresent(text -> parts.add(words.text("seen.conflict", Map.of("why", text))));
        return words.text(
                "seen.line",
                Map.of(
                        "when", words.time(LocalDateTime.ofInstant(seen.seenAt(), benchleaf.zone())),
                        "who", seen.who(),
                        "name", name(seen, benchleaf),
                        "row", seen.lot().orElse(seen.place()),
                        "what", String.join("; ", parts)));
    }
}
