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
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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

    @Option(names = "--json", description = "for machines")
    private boolean json;

    FacetsCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            NeedParameters.Asked asked =
                    need.asked(benchleaf, benchleaf.needReader(), String.join(" ", words), EnumSet.allOf(Facet.class));
            NeedAnswer answer = benchleaf.needSearch().answer(asked.query());
            if (json) {
                console.out().println(json(answer.facets()).toPrettyString());
            } else {
                new AnswerText(benchleaf.wording()).writeReading(asked.reading(), asked.wishes(), console.out());
                answer.facets()
                        .forEach((facet, counts) -> console.out()
                                .println(benchleaf.wording().term(facet) + ": "
                                        + counts.stream()
                                                .map(count -> count.value() + " "
                                                        + benchleaf.wording().count(count.plants()))
                                                .collect(Collectors.joining(", "))));
            }
        }
        return ErrorReport.DONE;
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
