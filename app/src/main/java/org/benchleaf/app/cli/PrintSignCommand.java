package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.render.CardFormat;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "sign", mixinStandardHelpOptions = true, description = "One sign a plant, for the end of an aisle.")
final class PrintSignCommand extends WorkspaceCommand {
    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final PaperOptions words = new PaperOptions();

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

    @Mixin
    private final OutOption out = new OutOption("sign.pdf");

    PrintSignCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<Wanted> wanted = plants.in(benchleaf).stream()
                .map(plant -> new Wanted(plant, size, Optional.empty()))
                .toList();
        PressOutcome outcome;
        try (PressProgress progress = new PressProgress(console().err(), benchleaf.wording(), wanted.size())) {
            outcome = benchleaf
                    .printing(words.style(benchleaf))
                    .cards()
                    .print(
                            wanted,
                            !unpriced,
                            wide ? format.wide() : format,
                            PrintOrder.GIVEN,
                            press.order(benchleaf, progress),
                            out.file());
        }
        return press.report(outcome, written(out.file(), outcome.pages(), "sign"), benchleaf, console());
    }
}
