package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.SizeAdvice;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.stock.BallStandard;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        description = "Says what a size of the trade means: the volumes of a container class, where a caliper is taken,"
                + " the least root ball, about what it weighs.")
final class SizeCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "SIZE", description = "'#3', '2.5 in cal B&B', '5-6 ft B&B', '19 cm'")
    private List<String> words = List.of();

    @Option(names = "--shrub", description = "by the table of deciduous shrubs, not that of conifers")
    private boolean shrub;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    SizeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        StockSize size = switch (StockSize.read(String.join(" ", words))) {
            case Reading.Read<StockSize>(StockSize read) -> read;
            case Reading.Refused<StockSize>(org.benchleaf.shared.Problem problem) -> throw new Refusal(problem);
        };
        Wording wording = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);
        BallStandard.Kind kind = shrub ? BallStandard.Kind.DECIDUOUS_SHRUB : BallStandard.Kind.CONE_TYPE_CONIFER;
        List<String> advice = new SizeAdvice(wording).of(size, kind);
        if (json) {
            console.out().println(json(size, kind, advice));
            return ErrorReport.DONE;
        }
        console.out().println(wording.size(size));
        advice.forEach(line -> console.out().println("  " + line));
        if (!advice.isEmpty()) {
            console.out().println("  " + wording.text("size.advice.source"));
        }
        return ErrorReport.DONE;
    }

    private static String json(StockSize size, BallStandard.Kind kind, List<String> advice) {
        ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
        ObjectNode root = mapper.createObjectNode().put("size", size.toString());
        if (size instanceof StockSize.Container(org.benchleaf.shared.stock.ContainerClass of)) {
            root.put("leastCubicInches", of.minCubicInches()).put("mostCubicInches", of.maxCubicInches());
        }
        if (size instanceof StockSize.Caliper caliper) {
            root.put("measuredAtInches", caliper.measuredAtInches());
        }
        BallStandard.leastInches(size, kind)
                .ifPresent(across -> root.put("leastBallInches", across)
                        .put("leastBallDepthInches", BallStandard.leastDepthInches(across)));
        ArrayNode said = root.putArray("advice");
        advice.forEach(said::add);
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
