package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
import org.benchleaf.search.need.NeedReader;
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

    @Mixin
    private final ManyNeeds many = new ManyNeeds();

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
            if (many.csv()) {
                console.out().println("need,key,name,place,among,kept_out_by,met,missed,unknown");
            }
            NeedReader reader = need.reader(benchleaf);
            for (String sentence : many.sentences(words)) {
                NeedParameters.Asked asked = need.asked(benchleaf, reader, sentence, Set.of());
                Why why =
                        benchleaf.needSearch().why(asked.query(), record.key()).orElseThrow();
                write(benchleaf, sentence, asked, why);
            }
        }
        return ErrorReport.DONE;
    }

    private void write(Benchleaf benchleaf, String sentence, NeedParameters.Asked asked, Why why) {
        Wording wording = need.wording(benchleaf);
        if (many.json()) {
            console.out().println(json(benchleaf, sentence, asked, why));
        } else if (many.csv()) {
            console.out().println(csv(wording, sentence, asked, why));
        } else {
            AnswerText text = new AnswerText(wording);
            text.writeReading(asked.reading(), asked.wishes(), console.out());
            console.out().println(place(wording, why, asked));
            text.writeMatch(why.match(), asked.query().now(), console.out());
        }
    }

    private String json(Benchleaf benchleaf, String sentence, NeedParameters.Asked asked, Why why) {
        AnswerJson writer = new AnswerJson(need.wording(benchleaf), benchleaf.settings(), !many.batch());
        ObjectNode node = writer.object();
        node.put("need", sentence);
        node.put("plant", why.match().plant().key().text());
        node.put("name", why.match().plant().name().toString());
        why.place().ifPresent(at -> node.put("place", at));
        node.put("among", why.among());
        ArrayNode keptOut = node.putArray("keptOutBy");
        keptOutBy(need.wording(benchleaf), asked, why).forEach(keptOut::add);
        writer.addReasons(node, why.match());
        return writer.write(node);
    }

    private static String csv(Wording wording, String sentence, NeedParameters.Asked asked, Why why) {
        AnswerCsv sheet = new AnswerCsv(wording);
        return AnswerCsv.row(
                sentence,
                why.match().plant().key().text(),
                why.match().plant().name().toString(),
                why.place().isPresent() ? Integer.toString(why.place().getAsInt()) : "",
                Integer.toString(why.among()),
                String.join("; ", keptOutBy(wording, asked, why)),
                sheet.reasons(why.match(), Reason.Met.class),
                sheet.reasons(why.match(), Reason.Missed.class),
                sheet.reasons(why.match(), Reason.Unknown.class));
    }

    private static List<String> keptOutBy(Wording wording, NeedParameters.Asked asked, Why why) {
        return why.keptOutBy(asked.query().need()).stream()
                .map(reason -> wording.wish(reason.wish()))
                .toList();
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
        List<String> keptOut = keptOutBy(wording, asked, why);
        return keptOut.isEmpty()
                ? wording.text("why.far-behind", Map.of("among", among))
                : wording.text("why.kept-out", Map.of("wishes", String.join("; ", keptOut)));
    }
}
