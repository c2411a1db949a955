package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.catalog.model.PlantRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "sheet", mixinStandardHelpOptions = true, description = "One product sheet a plant.")
final class PrintSheetCommand extends WorkspaceCommand {
    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final DocumentOptions document = new DocumentOptions("sheet.pdf");

    @Mixin
    private final PressOptions press = new PressOptions();

    @Option(names = "--sources", description = "print what other sources state beside the facts shown")
    private boolean sources;

    PrintSheetCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<PlantRecord> chosen = plants.in(benchleaf);
        PressOutcome outcome;
        try (PressProgress progress = new PressProgress(console().err(), benchleaf.wording(), chosen.size())) {
            outcome = benchleaf
                    .printing(document.style(benchleaf))
                    .sheets()
                    .print(
                            chosen,
                            document.format(benchleaf),
                            sources,
                            press.order(benchleaf, progress),
                            document.file());
        }
        return press.report(outcome, written(document.file(), outcome.pages(), "page"), benchleaf, console());
    }
}
