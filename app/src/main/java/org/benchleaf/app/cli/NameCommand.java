package org.benchleaf.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.NameLookup;
import org.benchleaf.app.service.NameLookup.Found;
import org.benchleaf.app.service.NameLookup.NameAnswer;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.content.Wording;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Source;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "name",
        mixinStandardHelpOptions = true,
        description = "Finds plants by name, old, misspelt and misheard ones too, and says how each was found.")
final class NameCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            arity = "0..*",
            paramLabel = "NAME",
            description = "a botanical or common name, the beginning of one, or what was heard")
    private List<String> words = List.of();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "5",
            description = "how many, 1 to 1000 (default: ${DEFAULT-VALUE})")
    private int limit;

    @Option(names = "--json", description = "for machines: parts of the name and plants found")
    private boolean json;

    @Option(
            names = "--batch",
            paramLabel = "FILE",
            description = "one name a line, - for standard input; answers one line of JSON each")
    private Optional<String> batch = Optional.empty();

    NameCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        int most = Math.clamp(limit, 1, 1000);
        if (batch.isEmpty() && words.isEmpty()) {
            throw new Refusal(Problem.of("name.missing", ""));
        }
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            NameLookup lookup = new NameLookup(benchleaf.catalog(), benchleaf.names());
            if (batch.isPresent()) {
                eachLine(lookup, batch.get(), most);
                return ErrorReport.DONE;
            }
            NameAnswer answer = lookup.ask(String.join(" ", words), most);
            if (json) {
                console.out().println(new NameJson().pretty(answer));
            } else {
                write(answer, benchleaf.wording());
            }
        }
        return ErrorReport.DONE;
    }

    private void eachLine(NameLookup lookup, String file, int most) {
        NameJson lines = new NameJson();
        try (BufferedReader reader = file.equals("-")
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                console.out().println(lines.line(lookup.ask(line.strip(), most)));
                if (!reader.ready()) {
                    console.out().flush();
                }
            }
        } catch (NoSuchFileException missing) {
            throw new Refusal(Problem.of("file.missing", file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void write(NameAnswer answer, Wording wording) {
        boolean sure =
                !answer.found().isEmpty() && answer.found().getFirst().how().compareTo(NameMatch.PREFIX) <= 0;
        if (answer.reading() instanceof NameReading.Partly partly
                && partly.known().isPresent()
                && sure) {
            console.out().println(wording.text("name.left-over", Map.of("read", partly.rest())));
        }
        if (answer.found().isEmpty()) {
            console.out().println(wording.text("name.none", Map.of("read", answer.typed())));
        }
        if (!answer.kin().isEmpty()) {
            console.out().println(wording.text("name.kin"));
            answer.kin().forEach(plant -> console.out().println(plant.key() + "  " + plant.name()));
        }
        for (Found found : answer.found()) {
            String how = wording.text("name.how." + NameJson.word(found.how()), Map.of("matched", found.matched()));
            String by = found.synonymBy().stream().map(Source::text).collect(Collectors.joining("; "));
            String said = by.isEmpty() ? how : how + wording.text("name.by", Map.of("sources", by));
            console.out().println(found.plant().key() + "  " + found.plant().name() + "  (" + said + ")");
        }
    }
}
