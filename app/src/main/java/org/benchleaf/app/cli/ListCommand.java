package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.shared.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Plant lists of jobs: quantities from beds and spacings, checked as a whole, priced, exported.",
        synopsisSubcommandLabel = "WHAT")
final class ListCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine list = new CommandLine(new ListCommand());
        new Commands()
                .with("new", () -> new ListNewCommand(console, clock))
                .with("add", () -> new ListAddCommand(console, clock))
                .with("site", () -> new ListChangeCommand(console, clock))
                .with("remove", () -> new ListRemoveCommand(console, clock))
                .with("show", () -> new ListShowCommand(console, clock))
                .with("check", () -> new ListCheckCommand(console, clock))
                .with("quantity", () -> new ListQuantityCommand(console))
                .with("export", () -> new ListExportCommand(console, clock))
                .addTo(list, words);
        return list;
    }

    /// @throws Refusal when there is none of that name
    static PlantList find(Benchleaf benchleaf, String name) {
        return benchleaf
                .lists()
                .find(name)
                .orElseThrow(() -> new Refusal(Problem.of("list.unknown", name)
                        .with("known", String.join(", ", benchleaf.lists().names()))));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "what with the list? One of those below.");
    }
}
