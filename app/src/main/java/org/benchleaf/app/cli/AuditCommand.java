package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.AuditReport;
import org.benchleaf.catalog.audit.AuditSums;
import org.benchleaf.catalog.audit.PlantAudit;
import org.benchleaf.catalog.audit.PlantAudit.Kind;
import org.benchleaf.content.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description =
                "Looks through the catalog: gaps, conflicts between sources, impossible values, names not accepted;"
                        + " with a score of data quality.")
final class AuditCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "0..*", paramLabel = "PLANT", description = "a plant key or name (default: all plants)")
    private List<String> words = List.of();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "write the report as a page, too")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--show",
            paramLabel = "N",
            defaultValue = "20",
            description = "how many plants are written out, the least known first (default: ${DEFAULT-VALUE})")
    private int most;

    AuditCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            List<PlantAudit> plants = new ArrayList<>();
            AuditSums sums = benchleaf.audit(plants::add);
            if (!words.isEmpty()) {
                plants = List.of(benchleaf.audit(benchleaf.plantFinder().find(String.join(" ", words))));
            }
            List<PlantAudit> sorted =
                    plants.stream().sorted(AuditReport.leastKnownFirst()).toList();
            if (json) {
                console.out().println(json(sums, sorted, benchleaf.wording()));
            } else {
                write(sums, sorted, benchleaf.wording());
            }
            if (html.isPresent()) {
                long revision = benchleaf.catalog().revision().number();
                PreviewCommand.save(
                        html.get(),
                        benchleaf
                                .reports()
                                .page(
                                        new AuditReport(benchleaf.wording()).page(sums, sorted, revision),
                                        benchleaf.language()));
            }
        }
        return ErrorReport.DONE;
    }

    private void write(AuditSums sums, List<PlantAudit> plants, Wording wording) {
        PrintWriter out = console.out();
        AuditReport report = new AuditReport(wording);
        for (PlantAudit plant : plants.stream().limit(most).toList()) {
            out.println(wording.text(
                    "audit.plant", Map.of("name", plant.name().toString(), "score", Integer.toString(plant.score()))));
            plant.remarks().stream()
                    .filter(remark -> remark.kind() != Kind.GAP)
                    .forEach(remark -> out.println("    " + report.text(remark)));
            String missing = report.missing(plant);
            if (!missing.isEmpty()) {
                out.println("    " + wording.text("audit.missing", Map.of("facts", missing)));
            }
        }
        if (plants.size() > most) {
            out.println(wording.text("audit.more", Map.of("count", wording.count((long) plants.size() - most))));
        }
        report.gaps(sums)
                .forEach(row -> out.printf(
                        "  %-24s %s%n", row.cells().get(0), row.cells().get(1)));
        report.sums(sums).forEach(sum -> out.println(sum.value() + " " + sum.label()));
    }

    private static String json(AuditSums sums, List<PlantAudit> plants, Wording wording) {
        AuditReport report = new AuditReport(wording);
        ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
        ObjectNode root = mapper.createObjectNode();
        root.put("plants", sums.plants()).put("score", sums.score());
        ObjectNode kinds = root.putObject("remarks");
        for (Kind kind : Kind.values()) {
            kinds.put(kind.name().toLowerCase(Locale.ROOT), sums.byKind().getOrDefault(kind, 0));
        }
        ObjectNode gaps = root.putObject("gaps");
        sums.gapsByAttribute().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(gap -> gaps.put(gap.getKey(), gap.getValue()));
        ArrayNode list = root.putArray("byPlant");
        for (PlantAudit plant : plants) {
            ObjectNode node = list.addObject()
                    .put("key", plant.key().text())
                    .put("name", plant.name().toString())
                    .put("score", plant.score());
            ArrayNode remarks = node.putArray("remarks");
            plant.remarks()
                    .forEach(remark -> remarks.addObject()
                            .put("kind", remark.kind().name().toLowerCase(Locale.ROOT))
                            .put("fact", remark.attribute())
                            .put("text", report.text(remark)));
        }
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
