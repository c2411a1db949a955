package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
        name = "comparison",
        mixinStandardHelpOptions = true,
        description = "Two to four plants side by side, what differs first.")
final class PrintComparisonCommand extends WorkspaceCommand {
    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final DocumentOptions document = new DocumentOptions("comparison.pdf");

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final HtmlOption html = new HtmlOption();

    PrintComparisonCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        List<PlantRecord> chosen = plants.in(benchleaf);
        if (chosen.size() < 2 || chosen.size() > Comparison.MOST) {
            throw new Refusal(Problem.of("print.compared", Integer.toString(chosen.size())));
        }
        Comparison comparison = documents.assembler().comparison(chosen, benchleaf.now());
        PressOutcome outcome = documents.comparison(
                comparison, chosen, document.format(benchleaf), press.order(benchleaf), document.file());
        html.write(console(), file -> documents.comparison(comparison, file));
        return press.report(outcome, written(document.file(), outcome.pages(), "page"), benchleaf, console());
    }
}
