package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.content.Wording;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.need.NeedReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "facets",
        mixinStandardHelpOptions = true,
        description =
                "Tells what an answer can be narrowed by: for each value, how many plants miss nothing else and have it.")
final class FacetsCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final NeedParameters need = new NeedParameters();

    @Parameters(arity = "0..*", paramLabel = "WORDS", description = "the need in plain words")
    private List<String> words = List.of();

    @Mixin
    private final ManyNeeds many = new ManyNeeds();

    FacetsCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            if (many.csv()) {
                console.out().println("need,facet,value,plants");
            }
            NeedReader reader = need.reader(benchleaf);
            for (String sentence : many.sentences(words)) {
                NeedParameters.Asked asked = need.asked(benchleaf, reader, sentence, EnumSet.allOf(Facet.class));
                write(benchleaf, sentence, asked, benchleaf.needSearch().answer(asked.query()));
            }
        }
        return ErrorReport.DONE;
    }

    private void write(Benchleaf benchleaf, String sentence, NeedParameters.Asked asked, NeedAnswer answer) {
        if (many.json()) {
            AnswerJson writer = new AnswerJson(need.wording(benchleaf), benchleaf.settings(), !many.batch());
            ObjectNode facets = json(answer.facets());
            ObjectNode line = writer.object().put("need", sentence).set("facets", facets);
            console.out().println(writer.write(many.batch() ? line : facets));
        } else if (many.csv()) {
            answer.facets()
                    .forEach((facet, counts) -> counts.forEach(count -> console.out()
                            .println(AnswerCsv.row(
                                    sentence, facet.term(), count.value(), Integer.toString(count.plants())))));
        } else {
            Wording wording = need.wording(benchleaf);
            new AnswerText(wording).writeReading(asked.reading(), asked.wishes(), console.out());
            answer.facets()
                    .forEach((facet, counts) -> console.out()
                            .println(wording.term(facet) + ": "
                                    + counts.stream()
                                            .map(count -> count.value() + " " + wording.count(count.plants()))
                                            .collect(Collectors.joining(", "))));
        }
    }

    /// An object with a list of values and counts for each facet.
    static ObjectNode json(Map<Facet, List<FacetCount>> facets) {
        ObjectNode root = new ObjectMapper().createObjectNode();
        facets.forEach((facet, counts) -> {
            ArrayNode values = root.putArray(facet.term());
            counts.forEach(
                    count -> values.addObject().put("value", count.value()).put("plants", count.plants()));
        });
        return root;
    }
}
