package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.search.names.NameHit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "name",
        mixinStandardHelpOptions = true,
        description = "Finds plants by name, misspelt ones too, and says how each was found.")
final class NameCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            arity = "1..*",
            paramLabel = "NAME",
            description = "a botanical or common name, or the beginning of one")
    private List<String> words = List.of();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "5",
            description = "how many (default: ${DEFAULT-VALUE})")
    private int limit;

    NameCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        String typed = String.join(" ", words);
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            List<NameHit> hits = benchleaf.names().find(typed, limit);
            if (hits.isEmpty()) {
                console.out().println(benchleaf.wording().text("name.none", Map.of("read", typed)));
            }
            for (NameHit hit : hits) {
                String accepted = benchleaf
                        .catalog()
                        .plant(hit.plant())
                        .map(plant -> plant.name().toString())
                        .orElse("");
                String how = benchleaf
                        .wording()
                        .text(
                                "name.how."
                                        + hit.how()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-'),
                                Map.of("matched", hit.matched()));
                console.out().println(hit.plant() + "  " + accepted + "  (" + how + ")");
            }
        }
        return ErrorReport.DONE;
    }
}
