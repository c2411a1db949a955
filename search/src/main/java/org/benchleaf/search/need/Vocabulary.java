package org.benchleaf.search.need;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.shared.fact.Region;

/// The words of a language that needs are read with: phrases by duty, each with its meaning. Immutable.
public final class Vocabulary {
    private final Map<String, Map<String, String>> sections;

    private Vocabulary(Map<String, Map<String, String>> sections) {
        this.sections = sections;
    }

    /// Reads the words of a language from UTF-8 text in the form of `need_en.words`.
    ///
    /// @throws IllegalArgumentException when a wish in it is not one
    /// @throws java.io.UncheckedIOException when the text cannot be read
    public static Vocabulary read(InputStream words) {
        Map<String, Map<String, String>> sections = new LinkedHashMap<>();
        String section = "";
        BufferedReader reader = new BufferedReader(new InputStreamReader(words, StandardCharsets.UTF_8));
        for (String line : reader.lines().map(String::strip).toList()) {
            if (line.startsWith("[")) {
                section = line.substring(1, line.length() - 1);
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                put(sections.computeIfAbsent(section, fresh -> new LinkedHashMap<>()), line);
            }
        }
        Vocabulary vocabulary = new Vocabulary(sections);
        vocabulary.table("wishes").values().forEach(WishWords::read);
        return vocabulary;
    }

    private static void put(Map<String, String> table, String line) {
        int equals = line.indexOf('=');
        String meaning = equals < 0 ? "" : line.substring(equals + 1).strip();
        for (String phrase : (equals < 0 ? line : line.substring(0, equals)).split(",")) {
            table.put(Sentence.plain(phrase.strip()), meaning);
        }
    }

    /// This vocabulary, and these names of species: `acer rubrum` or `red maple`, each with genus and epithet
    /// parted by a blank. A phrase that stands in the vocabulary already keeps its meaning.
    public Vocabulary withSpecies(Map<String, String> species) {
        Map<String, Map<String, String>> more = new LinkedHashMap<>(sections);
        Map<String, String> known = new LinkedHashMap<>(table("species"));
        species.forEach((name, meaning) -> known.putIfAbsent(Sentence.plain(name), meaning));
        species.forEach((name, meaning) -> known.putIfAbsent(plural(Sentence.plain(name)), meaning));
        more.put("species", known);
        return new Vocabulary(more);
    }

    /// This vocabulary, and the names of these genera, capital first.
    public Vocabulary withGenera(Collection<String> genera) {
        Map<String, Map<String, String>> more = new LinkedHashMap<>(sections);
        Map<String, String> known = new LinkedHashMap<>(table("genera"));
        genera.forEach(genus -> known.putIfAbsent(Sentence.plain(genus), genus));
        genera.forEach(genus -> known.putIfAbsent(plural(Sentence.plain(genus)), genus));
        more.put("genera", known);
        return new Vocabulary(more);
    }

    /// As English and Spanish make it of most names: `red maples`, `serviceberries`, `heucheras`, `beeches`.
    private static String plural(String name) {
        if (name.endsWith("y") && !name.matches(".*[aeiou]y")) {
            return name.substring(0, name.length() - 1) + "ies";
        }
        return name + (name.matches(".*(?:s|x|z|ch|sh)") ? "es" : "s");
    }

    /// Phrases and meanings of a duty.
    Map<String, String> table(String section) {
        return Collections.unmodifiableMap(sections.getOrDefault(section, Map.of()));
    }

    Optional<String> meaning(String section, String phrase) {
        return Optional.ofNullable(table(section).get(phrase));
    }

    /// Whether a language puts words so: a line under `[order]`.
    boolean puts(String order) {
        return table("order").containsKey(order);
    }

    /// A state or province by its name, in this language or as everywhere, or by its code.
    Optional<Region> region(String text) {
        return Region.read(meaning("regions", Sentence.plain(text)).orElse(text))
                .toOptional();
    }

    /// A group for a pattern that matches any phrase of a duty, the longest first.
    String any(String section) {
        return table(section).keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(phrase -> Pattern.quote(phrase).replace(" ", "\\E\\s+\\Q"))
                .collect(Collectors.joining("|", "(?:", ")"));
    }
}
