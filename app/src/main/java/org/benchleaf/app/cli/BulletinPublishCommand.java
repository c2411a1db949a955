package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.BulletinService;
import org.benchleaf.catalog.walk.Bulletin;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.YearWeek;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "publish",
        mixinStandardHelpOptions = true,
        description = "Makes the week's bulletin of all that was seen lately, with the reasons proposed, and lets"
                + " everybody see it. What was edited at the desk stays as it is; what was seen since comes behind it.")
final class BulletinPublishCommand extends WorkspaceCommand {
    @Option(names = "--week", paramLabel = "WEEK", description = "as 2026-W48 (default: this week)")
    private Optional<String> week = Optional.empty();

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "14",
            description = "of what was seen in so many days (default: ${DEFAULT-VALUE})")
    private int days;

    @Option(names = "--greeting", paramLabel = "TEXT", description = "a line above all")
    private Optional<String> greeting = Optional.empty();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    BulletinPublishCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        YearWeek of = week.map(text -> ok(YearWeek.read(text))).orElse(YearWeek.of(benchleaf.today()));
        Bulletin saved = ok(benchleaf.bulletins().save(made(benchleaf, of)));
        if (json) {
            console()
                    .out()
                    .println(Json.text(Json.object()
                            .put("week", of.toString())
                            .put("plants", saved.lines().size())
                            .put("path", "/bulletin/" + of)));
        } else {
            console()
                    .out()
                    .println(benchleaf
                            .wording()
                            .text(
                                    "seen.published",
                                    Map.of(
                                            "count",
                                            benchleaf
                                                    .wording()
                                                    .count(saved.lines().size()),
                                            "address",
                                            benchleaf.settings().base() + "/bulletin/" + of)));
        }
        return ErrorReport.DONE;
    }

    private Bulletin made(Benchleaf benchleaf, YearWeek of) {
        Optional<Bulletin> known = benchleaf.bulletins().find(of);
        List<Bulletin.Line> lines = new BulletinService(benchleaf)
                .filled(known.map(Bulletin::lines).orElse(List.of()), WalkSeenCommand.lately(benchleaf, days));
        if (lines.isEmpty()) {
            throw new Refusal(Problem.of("bulletin.nothing", of.toString()));
        }
        return new Bulletin(
                of,
                known.map(Bulletin::version).orElse(0),
                greeting.map(text -> text.replaceAll("\\s+", " ").strip())
                        .or(() -> known.map(Bulletin::greeting))
                        .orElse(""),
                lines,
                known.map(Bulletin::who).orElse(String.valueOf(System.getProperty("user.name"))),
                known.flatMap(Bulletin::publishedAt).or(() -> Optional.of(clock().instant())));
    }

    private static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
