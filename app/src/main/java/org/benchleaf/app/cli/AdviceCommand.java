package org.benchleaf.app.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.OwnAdvice;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Advised;
import org.benchleaf.search.substitute.PublishedAdvice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "advice",
        mixinStandardHelpOptions = true,
        description = "Takes the shop's own table of what to plant instead of what into the workspace, in the place of"
                + " the one before. Published lists come with the program.")
final class AdviceCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            paramLabel = "FILE",
            description = "comma separated, with the headings original and instead; publisher, title, year and address"
                    + " where it is not the shop's own word")
    private Path file = Path.of("");

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    AdviceCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            Set<String> genera = genera(benchleaf);
            List<Advised> rows = OwnAdvice.read(file, benchleaf.settings().shopName(), genera::contains);
            Files.copy(file, benchleaf.workspace().insteadFile(), StandardCopyOption.REPLACE_EXISTING);
            long originals = rows.stream().map(Advised::original).distinct().count();
            if (json) {
                console.out()
                        .println(
                                Json.text(Json.object().put("rows", rows.size()).put("originals", originals)));
                return ErrorReport.DONE;
            }
            Wording words = benchleaf.wording();
            console.out()
                    .println(words.text(
                            "advice.taken",
                            Map.of("rows", words.count(rows.size()), "originals", words.count((int) originals))));
            return ErrorReport.DONE;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /// Those that the catalog, the plants that are known and not grown, or published lists have.
    private static Set<String> genera(Benchleaf benchleaf) {
        Set<String> genera = new HashSet<>(benchleaf.references().genera());
        benchleaf.catalog().forEachPlant(plant -> genera.add(plant.name().genus()));
        PublishedAdvice.builtIn().all().forEach(row -> {
            genera.add(row.original().genus());
            genera.add(row.instead().genus());
        });
        return genera;
    }
}
