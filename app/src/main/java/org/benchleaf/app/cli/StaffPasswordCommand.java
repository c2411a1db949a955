package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
        name = "password",
        mixinStandardHelpOptions = true,
        description = "Sets a new password and ends every session of its owner.")
final class StaffPasswordCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "whose")
    @SuppressWarnings("NullAway.Init")
    private String name;

    StaffPasswordCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        char[] password = new PasswordPrompt(benchleaf.wording()).ask(name);
        benchleaf.accounts().setPassword(name, password, StaffCommand.actor());
        console().out().println(benchleaf.wording().text("staff.password", Map.of("name", name)));
        return ErrorReport.DONE;
    }
}
