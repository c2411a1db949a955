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
        name = "add",
        mixinStandardHelpOptions = true,
        description = "Lets somebody sign in. The password is asked for, or read from the standard input.")
final class StaffAddCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "what they are called")
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

    StaffAddCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        Optional<String> asked = tier.of(role, benchleaf);
        char[] password = new PasswordPrompt(benchleaf.wording()).ask(name);
        StaffMember added = role == Role.CUSTOMER
                ? benchleaf.accounts().addCustomer(name, asked, password, StaffCommand.actor())
                : benchleaf.accounts().add(name, role, password, StaffCommand.actor());
        console()
                .out()
                .println(benchleaf
                        .wording()
                        .text(
                                "staff.added",
                                Map.of("name", added.name(), "role", TierOption.post(added, benchleaf.wording()))));
        return ErrorReport.DONE;
    }
}
