package org.benchleaf.search.names;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.Plants;
import org.benchleaf.search.index.FoldedName;

/// The names of the demo catalog and of USDA PLANTS: 2,753 plants with their synonyms and common names.
final class NameWorld {
    private NameWorld() {}

    static InMemoryCatalogView catalog() {
        InMemoryCatalogView catalog = new InMemoryCatalogView();
        long serial = 1;
        for (String line : lines("names.tsv")) {
            String[] cells = line.split("\t", -1);
            catalog.put(Plants.plant(
                    serial++,
                    NameReader.read(cells[0]).known().orElseThrow(),
                    Plants.facts(),
                    list(cells[1]),
                    list(cells[2])));
        }
        return catalog;
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    static List<String> lines(String resource) {
        try (InputStream in = Objects.requireNonNull(NameWorld.class.getResourceAsStream(resource))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// What was typed or said, with the words that the plant meant has in its names.
    ///
    /// @param heldOut not looked at when weights were chosen
    record Said(String text, List<String> meant, boolean heldOut) {
        static List<Said> read(String resource) {
            List<String> lines = lines(resource).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
            return IntStream.range(0, lines.size())
                    .mapToObj(number -> of(lines.get(number), number % 2 == 1))
                    .toList();
        }

        private static Said of(String line, boolean heldOut) {
            int cut = line.indexOf('=');
            return new Said(line.substring(0, cut).strip(), FoldedName.words(line.substring(cut + 1)), heldOut);
        }
    }

    /// How many of what was said found the plant meant among the first.
    record Recall(int asked, int found, List<String> missed) {
        static Recall of(List<Said> said, int limit, NameIndex names, InMemoryCatalogView catalog) {
            List<String> missed = said.stream()
                    .filter(one -> !finds(one, limit, names, catalog))
                    .map(one -> one.text() + " = " + String.join(" ", one.meant()) + " -> "
                            + names.find(one.text(), limit).stream()
                                    .map(hit -> hit.how() + " " + hit.matched())
                                    .toList())
                    .toList();
            return new Recall(said.size(), said.size() - missed.size(), missed);
        }

        private static boolean finds(Said said, int limit, NameIndex names, InMemoryCatalogView catalog) {
            return names.find(said.text(), limit).stream()
                    .map(NameHit::plant)
                    .map(catalog::plant)
                    .flatMap(Optional::stream)
                    .anyMatch(plant -> {
                        StringBuilder all = new StringBuilder(plant.name().toString());
                        plant.synonyms().forEach(synonym -> all.append(' ').append(synonym.text()));
                        plant.commonNames().forEach(common -> all.append(' ').append(common.text()));
                        return FoldedName.words(all.toString()).containsAll(said.meant());
                    });
        }

        double share() {
            return asked == 0 ? 1 : (double) found / asked;
        }
    }
}
