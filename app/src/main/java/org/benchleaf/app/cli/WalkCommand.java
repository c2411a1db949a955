package org.benchleaf.app.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "walk",
        mixinStandardHelpOptions = true,
        description = "Crop walks and what was seen on them.",
        synopsisSubcommandLabel = "WHAT")
final class WalkCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine walk = new CommandLine(new WalkCommand());
        new Commands()
                .with("list", () -> new WalkListCommand(console, clock))
                .with("seen", () -> new WalkSeenCommand(console, clock))
                .addTo(walk, words);
        return walk;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "what of the walks? One of those below.");
    }
}
