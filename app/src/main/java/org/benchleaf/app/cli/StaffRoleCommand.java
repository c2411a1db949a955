package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.StaffMember;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "role",
        mixinStandardHelpOptions = true,
        description = "Changes what somebody may do; lets one who has left sign in again.")
final class StaffRoleCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

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
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            StaffMember changed = benchleaf.accounts().change(name, role, true, StaffCommand.actor());
            console.out()
                    .println(benchleaf
                            .wording()
                            .text("staff.changed", Map.of("name", changed.name(), "role", role.term())));
        }
        return ErrorReport.DONE;
    }
}
