package org.benchleaf.catalog.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.name.BotanicalName;

/// The parents of hybrids in genera that lists of law name; `hybrid-parents.csv` gives the source of each.
final class HybridParents {
    private static final String FILE = "hybrid-parents.csv";

    private final Map<String, List<BotanicalName>> parents = new HashMap<>();

    HybridParents() {
        try (InputStream stream = HybridParents.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("missing from the program: " + FILE);
            }
            new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(line -> line.split(","))
                    .forEach(cells -> parents.put(key(name(cells[0])), List.of(name(cells[1]), name(cells[2]))));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// The parent species; empty when they are not known here.
    Optional<List<BotanicalName>> of(BotanicalName hybrid) {
        return Optional.ofNullable(parents.get(key(hybrid)));
    }

    private static String key(BotanicalName name) {
        return NameStem.fold(name.genus()) + " "
                + name.species().map(epithet -> NameStem.stem(epithet.text())).orElse("");
    }

    private static BotanicalName name(String text) {
        return NameReader.read(text)
                .known()
                .orElseThrow(() -> new IllegalStateException(FILE + " holds no name: " + text));
    }
}
