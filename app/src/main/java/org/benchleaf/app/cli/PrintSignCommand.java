package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.render.CardFormat;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "sign", mixinStandardHelpOptions = true, description = "One sign a plant, for the end of an aisle.")
final class PrintSignCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final PaperOptions paper = new PaperOptions();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "sign",
            description = "sign (11 x 17 in) or a3; default: ${DEFAULT-VALUE}")
    @SuppressWarnings("NullAway.Init")
    private CardFormat format;

    @Option(names = "--wide", description = "the sign lies instead of standing")
    private boolean wide;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "the item's size, for example '#3' (default: the smallest sold)")
    private Optional<StockSize> size = Optional.empty();

    @Option(names = "--no-price", description = "leave the price out")
    private boolean unpriced;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "sign.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintSignCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            int pages = benchleaf
                    .printing(paper.style(benchleaf))
                    .benchCards(plants.in(benchleaf), size, !unpriced, wide ? format.wide() : format, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " sign" : " signs"));
        }
        return ErrorReport.DONE;
    }
}
