package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.app.BaseChange;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.SettingsFile;
import org.benchleaf.catalog.prints.PrintedBase;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.LiveLink;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "settings",
        mixinStandardHelpOptions = true,
        description = "Shows what the shop has decided, or changes one of it.")
final class SettingsCommand extends WorkspaceCommand {
    private static final String BASE = "base";

    @Parameters(index = "0", arity = "0..1", paramLabel = "KEY", description = "which setting (default: all)")
    private Optional<String> key = Optional.empty();

    @Parameters(index = "1", arity = "0..1", paramLabel = "VALUE", description = "what it is from now on")
    private Optional<String> value = Optional.empty();

    @Option(names = "--yes", description = "change the base address although printed codes lead to another one")
    private boolean sure;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    SettingsCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        SettingsFile file = new SettingsFile(benchleaf.workspace());
        if (key.isPresent() && value.isPresent()) {
            if (key.get().equals(BASE)) {
                askAboutPaper(benchleaf, value.get());
            }
            file.change(key.get(), value.get());
        }
        Map<String, String> values = new TreeMap<>(file.values());
        key.ifPresent(asked -> values.keySet().retainAll(java.util.Set.of(asked)));
        if (json) {
            console().out().println(new ObjectMapper().valueToTree(values).toPrettyString());
        } else {
            values.forEach((name, text) -> console().out().println(name + " = " + text));
        }
        return ErrorReport.DONE;
    }

    /// Paper in the field cannot be changed: its owner says that they know.
    private void askAboutPaper(Benchleaf benchleaf, String address) {
        URI to = LiveLink.readBase(address)
                .toOptional()
                .orElseThrow(() -> new Refusal(Problem.of("base.unknown", address)));
        BaseChange change = benchleaf.baseChange(to);
        Wording words = benchleaf.wording();
        for (PrintedBase left : change.left()) {
            console()
                    .err()
                    .println(words.text(
                            "settings.base.left",
                            Map.of(
                                    "copies", words.count(left.copies()),
                                    "base", left.base(),
                                    "date", left.last().toString().substring(0, 10))));
        }
        if (change.copies() > 0 && !sure) {
            throw new Refusal(
                    Problem.of("settings.base-in-field", to.toString()).with("copies", words.count(change.copies())));
        }
    }
}
