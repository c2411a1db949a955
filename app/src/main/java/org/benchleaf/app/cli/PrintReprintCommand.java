package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PressOrder;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.render.CardFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "reprint",
        mixinStandardHelpOptions = true,
        description = "Prints bench cards or labels again that would say something else today.")
final class PrintReprintCommand extends WorkspaceCommand {
    @Mixin
    private final PressOptions press = new PressOptions();

    @Option(
            names = "--changed-since",
            paramLabel = "DATE",
            description = "only what was printed on that day or later, for example 2026-11-23 (default: all)")
    private Optional<LocalDate> since = Optional.empty();

    @Option(names = "--labels", description = "labels, as they were printed on --paper, instead of cards")
    private boolean asLabels;

    @Mixin
    private final LabelOptions labels = new LabelOptions();

    @Mixin
    private final PaperOptions words = new PaperOptions();

    @Option(names = "--wide", description = "cards that lie instead of standing")
    private boolean wide;

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            defaultValue = "large",
            description = "the size of card (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private CardFormat format;

    @Mixin
    private final OutOption out = new OutOption("changed.pdf");

    PrintReprintCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        Instant from = since.map(day -> day.atStartOfDay(clock().getZone()).toInstant())
                .orElse(Instant.EPOCH);
        try (PressProgress progress = new PressProgress(console().err(), benchleaf.wording(), 0)) {
            PrintService printing = benchleaf.printing(words.style(benchleaf));
            PressOrder order = press.order(benchleaf, progress);
            PressOutcome outcome = asLabels
                    ? printing.labels().changed(from, labels.run(printing), order, out.file())
                    : printing.cards().changed(from, wide ? format.wide() : format, order, out.file());
            String thing = asLabels ? "sheet of changed label" : "changed card";
            return press.report(outcome, written(out.file(), outcome.pages(), thing), benchleaf, console());
        }
    }
}
