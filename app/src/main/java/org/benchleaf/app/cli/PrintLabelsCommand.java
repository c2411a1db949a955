package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "labels",
        mixinStandardHelpOptions = true,
        description = "Labels for every lot of the plants that holds any, on stock paper.")
final class PrintLabelsCommand extends WorkspaceCommand {
    @Mixin
    private final PrintChoice choice = new PrintChoice();

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final LabelOptions labels = new LabelOptions();

    @Option(
            names = "--copies",
            paramLabel = "N",
            defaultValue = "1",
            description = "labels of each lot (default: ${DEFAULT-VALUE})")
    private int copies;

    @Option(names = "--copies-from-stock", description = "a label for every plant of a lot, by its count")
    private boolean byCount;

    @Option(
            names = "--png",
            paramLabel = "FOLDER",
            description = "for a roll printer: one picture of black and white dots a label, besides the PDF")
    private Optional<Path> pictures = Optional.empty();

    @Mixin
    private final OutOption out = new OutOption("labels.pdf");

    PrintLabelsCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        if (copies < 1 || copies > 10_000) {
            throw new Refusal(Problem.of("print.copies", Integer.toString(copies)));
        }
        PrintService printing = benchleaf.printing();
        LabelRun run = labels.run(printing);
        List<Wanted> wanted = choice.in(benchleaf, Optional.of(copies));
        PressOutcome outcome;
        try (PressProgress progress = new PressProgress(console().err(), benchleaf.wording(), wanted.size())) {
            outcome = printing.labels()
                    .print(wanted, byCount, run, choice.order(), press.order(benchleaf, progress), out.file());
        }
        if (outcome.pages() > 0 && pictures.isPresent()) {
            printing.labels().pictures(wanted, byCount, run, choice.order(), pictures.get());
        }
        String written = written(out.file(), outcome.pages(), "sheet") + " of "
                + run.paper().key();
        return press.report(outcome, written, benchleaf, console());
    }
}
