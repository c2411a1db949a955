package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "need",
        mixinStandardHelpOptions = true,
        description = "Answers a landscape need: plants ranked, each with one reason a wish and its stock now.")
final class NeedCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final NeedOptions options = new NeedOptions();

    @Parameters(
            arity = "0..*",
            paramLabel = "WORDS",
            description = "the need in plain words, for example \"fall color zone 6 shade under 5 ft, 40 in #3\"")
    private List<String> words = List.of();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "10",
            description = "how many plants (default: ${DEFAULT-VALUE})")
    private int limit;

    @Option(names = "--skip", paramLabel = "N", defaultValue = "0", description = "leave out the first so many")
    private int skip;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    NeedCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            NeedReading reading = benchleaf.needReader().read(String.join(" ", words), benchleaf.today());
            List<WeighedWish> wishes = new ArrayList<>(reading.need().wishes());
            wishes.addAll(options.wishes(benchleaf.today(), benchleaf.settings().place()));
            YearWeek week = YearWeek.of(benchleaf.today());
            NeedAnswer answer = benchleaf.needSearch().answer(new NeedQuery(new Need(wishes), "", week, skip, limit));
            if (json) {
                console.out()
                        .println(new AnswerJson(benchleaf.wording(), benchleaf.settings()).text(reading, answer, week));
            } else {
                new AnswerText(benchleaf.wording()).write(reading, wishes, answer, skip, week, console.out());
            }
        }
        return ErrorReport.DONE;
    }
}
