package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "password",
        mixinStandardHelpOptions = true,
        description = "Sets a new password and ends every session of its owner.")
final class StaffPasswordCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "NAME", description = "whose")
    @SuppressWarnings("NullAway.Init")
    private String name;

    StaffPasswordCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            char[] password = new PasswordPrompt(benchleaf.wording()).ask(name);
            benchleaf.accounts().setPassword(name, password, StaffCommand.actor());
            console.out().println(benchleaf.wording().text("staff.password", Map.of("name", name)));
        }
        return ErrorReport.DONE;
    }
}
