package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "zones",
        mixinStandardHelpOptions = true,
        description =
                "Takes a table of hardiness zones by postal code into the workspace; none comes with the program.")
final class ZonesCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(paramLabel = "FILE", description = "comma separated, with the headings zipcode and zone")
    private Path file = Path.of("");

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ZonesCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock);
                Reader table = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            PostalZones zones = PostalZones.read(table);
            Files.copy(file, benchleaf.workspace().postalZonesFile(), StandardCopyOption.REPLACE_EXISTING);
            if (json) {
                ObjectNode answer = Json.object().put("codes", zones.size());
                zones.unread().forEach(answer.putArray("unread")::add);
                console.out().println(Json.text(answer));
                return zones.unread().isEmpty() ? ErrorReport.DONE : ErrorReport.FINDINGS;
            }
            console.out()
                    .println(benchleaf
                            .wording()
                            .text(
                                    "zones.taken",
                                    Map.of(
                                            "codes", benchleaf.wording().count(zones.size()),
                                            "unread",
                                                    benchleaf
                                                            .wording()
                                                            .count(zones.unread()
                                                                    .size()))));
            return zones.unread().isEmpty() ? ErrorReport.DONE : ErrorReport.FINDINGS;
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Refusal(Problem.of("zones.unreadable", file.toString()));
        }
    }
}
