package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.walk.Walk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "list", mixinStandardHelpOptions = true, description = "The walks, the newest first.")
final class WalkListCommand extends WorkspaceCommand {
    private static final int MOST = 100;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    WalkListCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<Walk> walks = benchleaf.walks().walks(MOST);
        if (json) {
            ObjectNode answer = Json.object();
            ArrayNode all = answer.putArray("walks");
            walks.forEach(walk -> all.addObject()
                    .put("key", walk.key())
                    .put("who", walk.who())
                    .put("startedAt", walk.startedAt().toString())
                    .put("seen", benchleaf.walks().seenOn(walk.key()).size()));
            console().out().println(Json.text(answer));
            return ErrorReport.DONE;
        }
        if (walks.isEmpty()) {
            console().out().println(benchleaf.wording().text("seen.no-walk"));
        }
        walks.forEach(walk -> console()
                .out()
                .println(benchleaf
                        .wording()
                        .text(
                                "seen.walk",
                                Map.of(
                                        "when",
                                        benchleaf
                                                .wording()
                                                .time(LocalDateTime.ofInstant(walk.startedAt(), clock().getZone())),
                                        "who",
                                        walk.who(),
                                        "count",
                                        benchleaf
                                                .wording()
                                                .count(benchleaf
                                                        .walks()
                                                        .seenOn(walk.key())
                                                        .size())))));
        return ErrorReport.DONE;
    }
}
