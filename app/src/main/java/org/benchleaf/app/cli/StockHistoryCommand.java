package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "history",
        mixinStandardHelpOptions = true,
        description = "Everything that is written of a lot: what, when, who, why, and the count after it.")
final class StockHistoryCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Option(
            names = "--last",
            paramLabel = "N",
            defaultValue = "40",
            description = "the newest so many (default: ${DEFAULT-VALUE})")
    private int last;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    StockHistoryCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            LotRecord found =
                    benchleaf.ledger().lot(lot).orElseThrow(() -> new Refusal(Problem.of("lot.missing", lot)));
            List<Hold> holds = benchleaf.ledger().holds(lot);
            List<LedgerLine> lines = benchleaf.ledger().history(lot, Math.max(1, last));
            if (json) {
                console.out().println(new StockJson(clock.getZone()).history(found, holds, lines, clock.instant()));
            } else {
                write(benchleaf, found, holds, lines);
            }
        }
        return ErrorReport.DONE;
    }

    private void write(Benchleaf benchleaf, LotRecord found, List<Hold> holds, List<LedgerLine> lines) {
        Wording wording = benchleaf.wording();
        StockWords words = new StockWords(wording, clock.getZone());
        PrintWriter out = console.out();
        PlantKey plant = found.item().plant();
        String size =
                benchleaf.catalog().stock(List.of(plant)).getOrDefault(plant, PlantStock.none(plant)).items().stream()
                        .filter(item -> item.key().equals(found.item()))
                        .map(item -> wording.size(item.size(), item.form()))
                        .findFirst()
                        .orElse("");
        out.println(wording.text(
                "ledger.history",
                Map.of(
                        "lot", found.lot(),
                        "plant",
                                benchleaf
                                        .catalog()
                                        .plant(plant)
                                        .map(record -> record.name().toString())
                                        .orElse(plant.text()),
                        "size", size,
                        "count", wording.count(found.count()),
                        "held", wording.count(found.held()),
                        "free", wording.count(found.free()))));
        if (!found.place().isEmpty()) {
            out.println("  " + wording.text("ledger.history.place", Map.of("place", found.place())));
        }
        holds.forEach(hold -> out.println("  " + words.hold(hold)));
        out.println();
        lines.forEach(line -> out.println(words.line(line).stripTrailing()));
        if (lines.isEmpty()) {
            out.println("  " + wording.text("ledger.none"));
        }
        out.println();
        out.println(words.asOf(benchleaf.now()));
    }
}
