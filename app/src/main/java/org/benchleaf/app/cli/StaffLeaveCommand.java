package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.AccountRefused;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
        name = "leave",
        mixinStandardHelpOptions = true,
        description = "Lets somebody sign in no longer. The name stays in the ledger and the log.")
final class StaffLeaveCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "who")
    @SuppressWarnings("NullAway.Init")
    private String name;

    StaffLeaveCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        StaffMember member = benchleaf
                .accounts()
                .find(name)
                .orElseThrow(() -> new AccountRefused(Problem.of("staff.unknown", name)));
        benchleaf.accounts().change(name, member.role(), false, StaffCommand.actor());
        console().out().println(benchleaf.wording().text("staff.left", Map.of("name", member.name())));
        return ErrorReport.DONE;
    }
}
