package org.benchleaf.app.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "bulletin",
        mixinStandardHelpOptions = true,
        description = "The week's bulletin, made of what was seen on crop walks.",
        synopsisSubcommandLabel = "WHAT")
final class BulletinCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine bulletin = new CommandLine(new BulletinCommand());
        new Commands()
                .with("list", () -> new BulletinListCommand(console, clock))
                .with("publish", () -> new BulletinPublishCommand(console, clock))
                .addTo(bulletin, words);
        return bulletin;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "what with the bulletin? One of those below.");
    }
}
