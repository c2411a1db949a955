package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.SizeAdvice;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.YearWeek;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "plant",
        mixinStandardHelpOptions = true,
        description = "Shows all that is known of a plant, each fact with its source, and its stock now.")
final class PlantCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "1..*", paramLabel = "PLANT", description = "a plant key or a name")
    private List<String> words = List.of();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    PlantCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantRecord plant = benchleaf.plantFinder().find(String.join(" ", words));
            PlantStock stock = benchleaf
                    .catalog()
                    .stock(List.of(plant.key()))
                    .getOrDefault(plant.key(), PlantStock.none(plant.key()));
            if (json) {
                YearWeek week = YearWeek.of(benchleaf.today());
                console.out()
                        .println(new PlantJson(clock.getZone())
                                .text(
                                        plant,
                                        stock,
                                        week,
                                        clock.instant(),
                                        benchleaf.insteadWords().replaced(plant)));
            } else {
                write(plant, stock, benchleaf, console.out());
            }
        }
        return ErrorReport.DONE;
    }

    private static void write(PlantRecord plant, PlantStock stock, Benchleaf benchleaf, PrintWriter out) {
        Wording wording = benchleaf.wording();
        out.println(plant.name() + "  [" + plant.key() + "]");
        line(
                out,
                "common names",
                plant.commonNames().stream().map(CommonName::text).collect(Collectors.joining("; ")));
        line(
                out,
                "synonyms",
                plant.synonyms().stream()
                        .collect(Collectors.groupingBy(
                                Synonym::text,
                                LinkedHashMap::new,
                                Collectors.mapping(by -> by.source().text(), Collectors.joining(", "))))
                        .entrySet()
                        .stream()
                        .map(name -> name.getKey() + " (" + name.getValue() + ")")
                        .collect(Collectors.joining("; ")));
        for (Attribute<?> attribute : Attributes.all()) {
            plant.facts().fact(attribute).ifPresent(fact -> line(out, attribute.id(), described(fact, wording)));
            plant.otherFacts().stream()
                    .filter(other -> other.attribute().equals(attribute))
                    .forEach(other ->
                            line(out, "", wording.text("plant.other", Map.of("fact", described(other, wording)))));
        }
        List<String> insteadOf = benchleaf.insteadWords().of(plant);
        for (int at = 0; at < insteadOf.size(); at++) {
            line(out, at == 0 ? "instead of" : "", insteadOf.get(at));
        }
        line(out, "stock", new AnswerText(wording).stock(stock, YearWeek.of(benchleaf.today())));
        line(out, "", wording.stockAsOf(benchleaf.now()));
        SizeAdvice advice = new SizeAdvice(wording);
        stock.items().stream().map(ItemRecord::size).distinct().forEach(size -> {
            List<String> said = advice.of(size, SizeAdvice.kind(plant.facts()));
            line(out, wording.size(size), String.join("; ", said));
        });
    }

    private static String described(Fact<?> fact, Wording wording) {
        String origin = fact.inherited()
                ? wording.text("plant.inherited", Map.of("source", fact.source().text()))
                : fact.source().text();
        String value = fact.value() instanceof LengthRange length ? wording.length(length) : fact.text();
        return value + "  (" + origin + ")";
    }

    private static void line(PrintWriter out, String heading, String text) {
        if (!text.isEmpty()) {
            out.printf("  %-22s %s%n", heading.replace('_', ' '), text);
        }
    }
}
