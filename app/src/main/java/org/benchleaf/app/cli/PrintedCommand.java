package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.prints.PrintedBase;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "ledger",
        mixinStandardHelpOptions = true,
        description = "Tells what was printed, and on which addresses printed codes depend.")
final class PrintedCommand extends WorkspaceCommand {
    @Option(
            names = "--last",
            paramLabel = "N",
            defaultValue = "20",
            description = "how many entries (default: ${DEFAULT-VALUE})")
    private int last;

    PrintedCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        if (last < 1 || last > 100_000) {
            throw new Refusal(Problem.of("prints.last", Integer.toString(last)));
        }
        Wording words = benchleaf.wording();
        for (PrintedBase base : benchleaf.prints().bases()) {
            console()
                    .out()
                    .println(words.text(
                            "prints.base", Map.of("copies", words.count(base.copies()), "base", base.base())));
        }
        for (PrintedEntry printed : benchleaf.prints().last(last)) {
            console()
                    .out()
                    .println(words.text(
                            "prints.entry",
                            Map.of(
                                    "when",
                                            words.time(printed.at()
                                                    .atZone(clock().getZone())
                                                    .toLocalDateTime()),
                                    "copies", words.count(printed.entry().copies()),
                                    "document", printed.entry().document(),
                                    "format", printed.entry().format(),
                                    "name", printed.entry().name(),
                                    "price", printed.entry().price().orElse("-"),
                                    "address", printed.entry().address())));
        }
        return ErrorReport.DONE;
    }
}
