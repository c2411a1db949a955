package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.render.CardFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "reprint",
        mixinStandardHelpOptions = true,
        description = "Prints bench cards again that would say something else today.")
final class PrintReprintCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PressOptions press = new PressOptions();

    @Option(
            names = "--changed-since",
            paramLabel = "DATE",
            description = "only cards that were printed on that day or later, for example 2026-11-23 (default: all)")
    private Optional<LocalDate> since = Optional.empty();

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            defaultValue = "large",
            description = "the size of card (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private CardFormat format;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "changed.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintReprintCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Instant from =
                since.map(day -> day.atStartOfDay(clock.getZone()).toInstant()).orElse(Instant.EPOCH);
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock);
                PressProgress progress = new PressProgress(console.err(), benchleaf.wording(), 0)) {
            PressOutcome outcome =
                    benchleaf.printing().changedCards(from, format, press.order(benchleaf, progress), file);
            int pages = outcome.pages();
            return press.report(
                    outcome,
                    file + ": " + pages + (pages == 1 ? " changed card" : " changed cards"),
                    benchleaf,
                    console);
        }
    }
}
