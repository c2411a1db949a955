package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.shared.measure.YearWeek;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "list", mixinStandardHelpOptions = true, description = "The bulletins that everybody sees.")
final class BulletinListCommand extends WorkspaceCommand {
    private static final int MOST = 200;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    BulletinListCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<YearWeek> weeks = benchleaf.bulletins().published(MOST);
        if (json) {
            ObjectNode answer = Json.object();
            ArrayNode all = answer.putArray("bulletins");
            weeks.forEach(week -> all.addObject().put("week", week.toString()).put("path", "/bulletin/" + week));
            console().out().println(Json.text(answer));
            return ErrorReport.DONE;
        }
        if (weeks.isEmpty()) {
            console().out().println(benchleaf.wording().text("seen.no-bulletin"));
        }
        weeks.forEach(week -> console()
                .out()
                .println(benchleaf
                        .wording()
                        .text(
                                "seen.bulletin",
                                Map.of(
                                        "week",
                                        benchleaf.wording().week(week),
                                        "address",
                                        benchleaf.settings().base() + "/bulletin/" + week))));
        return ErrorReport.DONE;
    }
}
