package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.AccountRefused;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "leave",
        mixinStandardHelpOptions = true,
        description = "Lets somebody sign in no longer. The name stays in the ledger and the log.")
final class StaffLeaveCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "NAME", description = "who")
    @SuppressWarnings("NullAway.Init")
    private String name;

    StaffLeaveCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            StaffMember member = benchleaf
                    .accounts()
                    .find(name)
                    .orElseThrow(() -> new AccountRefused(Problem.of("staff.unknown", name)));
            benchleaf.accounts().change(name, member.role(), false, StaffCommand.actor());
            console.out().println(benchleaf.wording().text("staff.left", Map.of("name", member.name())));
        }
        return ErrorReport.DONE;
    }
}
