package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.catalog.accounts.Actor;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "staff",
        mixinStandardHelpOptions = true,
        description = "Who may sign in at the desk and on the walk, and as what.",
        synopsisSubcommandLabel = "WHAT")
final class StaffCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine staff = new CommandLine(new StaffCommand());
        new Commands()
                .with("add", () -> new StaffAddCommand(console, clock))
                .with("list", () -> new StaffListCommand(console, clock))
                .with("role", () -> new StaffRoleCommand(console, clock))
                .with("password", () -> new StaffPasswordCommand(console, clock))
                .with("leave", () -> new StaffLeaveCommand(console, clock))
                .with("token", () -> new StaffTokenCommand(console, clock))
                .addTo(staff, words);
        return staff;
    }

    /// The user of this machine: whoever may read the workspace's files may do everything in any case.
    static Actor actor() {
        return new Actor(System.getProperty("user.name"), Actor.COMMAND_LINE);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "what with the staff? One of those below.");
    }
}
