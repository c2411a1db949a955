package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.StaffMember;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "role",
        mixinStandardHelpOptions = true,
        description = "Changes what somebody may do; lets one who has left sign in again.")
final class StaffRoleCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "who")
    @SuppressWarnings("NullAway.Init")
    private String name;

    @Option(
            names = "--role",
            paramLabel = "ROLE",
            required = true,
            description = "${COMPLETION-CANDIDATES}; what each may do stands in docs/staff.md")
    @SuppressWarnings("NullAway.Init")
    private Role role;

    StaffRoleCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        StaffMember changed = benchleaf.accounts().change(name, role, true, StaffCommand.actor());
        console()
                .out()
                .println(
                        benchleaf.wording().text("staff.changed", Map.of("name", changed.name(), "role", role.term())));
        return ErrorReport.DONE;
    }
}
