package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "token",
        mixinStandardHelpOptions = true,
        description = "Makes a token with which a program is let in as somebody; it is shown once.")
final class StaffTokenCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "as whom")
    @SuppressWarnings("NullAway.Init")
    private String name;

    @Option(names = "--for", paramLabel = "WORDS", required = true, description = "what it is for")
    @SuppressWarnings("NullAway.Init")
    private String label;

    @Option(names = "--days", paramLabel = "DAYS", defaultValue = "365", description = "default: ${DEFAULT-VALUE}")
    private int days;

    StaffTokenCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        String token = benchleaf.accounts().makeToken(name, label, Duration.ofDays(days), StaffCommand.actor());
        console().err().println(benchleaf.wording().text("staff.token", Map.of("label", label)));
        console().out().println(token);
        return ErrorReport.DONE;
    }
}
