package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
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

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private TierOption tier;

    StaffRoleCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        Optional<String> asked = tier.of(role, benchleaf);
        StaffMember changed = role == Role.CUSTOMER
                ? benchleaf.accounts().changeCustomer(name, asked, StaffCommand.actor())
                : benchleaf.accounts().change(name, role, true, StaffCommand.actor());
        console()
                .out()
                .println(benchleaf
                        .wording()
                        .text(
                                "staff.changed",
                                Map.of("name", changed.name(), "role", TierOption.post(changed, benchleaf.wording()))));
        return ErrorReport.DONE;
    }
}
