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

@Command(name = "cards", mixinStandardHelpOptions = true, description = "One bench card a plant.")
final class PrintCardsCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final PaperOptions paper = new PaperOptions();

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            defaultValue = "large",
            description = "large (5.5 x 7 in), small (4 x 6 in), grand (7 x 11 in), a6 or a5; default: ${DEFAULT-VALUE}")
    @SuppressWarnings("NullAway.Init")
    private CardFormat format;

    @Option(names = "--wide", description = "the card lies instead of standing")
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
            defaultValue = "cards.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintCardsCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            int pages = benchleaf
                    .printing(paper.style(benchleaf))
                    .benchCards(plants.in(benchleaf), size, !unpriced, wide ? format.wide() : format, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " card" : " cards"));
        }
        return ErrorReport.DONE;
    }
}
