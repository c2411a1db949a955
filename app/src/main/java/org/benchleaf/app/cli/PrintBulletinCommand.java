package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "bulletin",
        mixinStandardHelpOptions = true,
        description = "The week's best: the first plant leads, the others stand beside it, then what is here.")
final class PrintBulletinCommand extends WorkspaceCommand {
    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            description = "why a plant is worth buying now, once a plant in their order (default: its selling note)")
    private List<String> reasons = new ArrayList<>();

    @Option(names = "--from", paramLabel = "DAY", description = "first day, as 2027-04-12 (default: today)")
    private Optional<LocalDate> from = Optional.empty();

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "7",
            description = "how many (default: ${DEFAULT-VALUE})")
    private int days;

    @Mixin
    private final DocumentOptions document = new DocumentOptions("bulletin.pdf");

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final HtmlOption html = new HtmlOption();

    PrintBulletinCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        List<PlantRecord> chosen = plants.in(benchleaf);
        if (reasons.size() > chosen.size()) {
            throw new Refusal(Problem.of("print.reasons", Integer.toString(reasons.size()))
                    .with("plants", Integer.toString(chosen.size())));
        }
        LocalDate first = from.orElse(benchleaf.today());
        Bulletin bulletin = documents
                .assembler()
                .bulletin(chosen, reasons, first, first.plusDays(Math.max(1, days) - 1L), benchleaf.now());
        PressOutcome outcome = documents.bulletin(
                bulletin, chosen, document.format(benchleaf), press.order(benchleaf), document.file());
        html.write(console(), file -> documents.bulletin(bulletin, file));
        return press.report(outcome, written(document.file(), outcome.pages(), "page"), benchleaf, console());
    }
}
