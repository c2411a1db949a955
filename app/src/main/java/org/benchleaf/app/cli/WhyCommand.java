package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Why;
import org.benchleaf.shared.need.Reason;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Tells why a plant answers a need or does not: its place, and a reason for every wish.")
final class WhyCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final NeedParameters need = new NeedParameters();

    @Parameters(
            index = "0",
            paramLabel = "PLANT",
            description = "a plant's key or name; put a name of several words in quotes")
    private String plant = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "WORDS", description = "the need in plain words")
    private List<String> words = List.of();

    WhyCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantRecord record = benchleaf.plantFinder().find(plant);
            NeedParameters.Asked asked =
                    need.asked(benchleaf, benchleaf.needReader(), String.join(" ", words), Set.of());
            Why why = benchleaf.needSearch().why(asked.query(), record.key()).orElseThrow();
            Wording wording = benchleaf.wording();
            AnswerText text = new AnswerText(wording);
            text.writeReading(asked.reading(), asked.wishes(), console.out());
            console.out().println(place(wording, why, asked));
            text.writeMatch(why.match(), asked.query().now(), console.out());
        }
        return ErrorReport.DONE;
    }

    private static String place(Wording wording, Why why, NeedParameters.Asked asked) {
        String among = wording.count(why.among());
        if (why.place().isPresent()) {
            return wording.text(
                    "why.place", Map.of("place", wording.count(why.place().getAsInt()), "among", among));
        }
        if (why.match().plant().retired()) {
            return wording.text("why.retired");
        }
        List<Reason> keptOut = why.keptOutBy(asked.query().need());
        return keptOut.isEmpty()
                ? wording.text("why.far-behind", Map.of("among", among))
                : wording.text(
                        "why.kept-out",
                        Map.of(
                                "wishes",
                                String.join(
                                        "; ",
                                        keptOut.stream()
                                                .map(reason -> wording.wish(reason.wish()))
                                                .toList())));
    }
}
