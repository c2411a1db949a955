package org.benchleaf.catalog.names;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Tells author citations from other words after a name.
///
/// Abbreviated authors end in a full stop; of those written in full, the ones that occur in USDA PLANTS names
/// are known from a list. An unknown word after `ex`, `&` or initials is an author too.
final class Authors {
    private static final Set<String> CONNECTORS = Set.of("ex", "&", "et", "in", "apud", "and");
    private static final Set<String> SURE_CONNECTORS = Set.of("ex", "apud");
    private static final Set<String> SMALL_WORDS = Set.of(
            "de", "von", "van", "der", "den", "du", "f.", "fil.", "hort.", "nom.", "cons.", "orth.", "sp.", "pro",
            "auct.", "non", "bis", "al.", "p.p.", "sensu", "emend.", "illeg.", "inval.");
    private static final Set<String> NO_AUTHORS =
            Set.of("Mr.", "Mrs.", "Ms.", "Dr.", "St.", "Ste.", "Mme.", "Mlle.", "Mt.", "No.", "Jr.", "Sr.");
    private static final Pattern INITIALS = Pattern.compile("(?:\\p{Lu}\\p{Ll}?\\.-?)+");
    private static final Set<String> IN_FULL = load();

    private Authors() {}

    private static Set<String> load() {
        try (InputStream list = Authors.class.getResourceAsStream("authors.txt")) {
            if (list == null) {
                throw new IllegalStateException("authors.txt is missing from the program");
            }
            return new BufferedReader(new InputStreamReader(list, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(String::strip)
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// How many of the words, from the first, are an author citation.
    ///
    /// @param sure the place in the name leaves no other reading, as after `(Torr. & A. Gray)`
    static int leading(List<String> words, boolean sure) {
        boolean signed = isSigned(words);
        if (!signed && !sure) {
            return IN_FULL.contains(String.join(" ", words)) ? words.size() : 0;
        }
        int at = 0;
        boolean wanted = sure;
        while (at < words.size()) {
            String word = words.get(at);
            String bare = word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
            boolean connector = CONNECTORS.contains(word);
            boolean known = SMALL_WORDS.contains(word) || IN_FULL.contains(bare) || isAbbreviated(bare);
            boolean joined = at + 1 < words.size() && CONNECTORS.contains(words.get(at + 1));
            if (!connector && !known && !wanted && !joined) {
                break;
            }
            if (bare.equals("L.") && words.size() - at > 2 && !isSigned(words.subList(at + 1, words.size()))) {
                return at + 1; // Linnaeus, and what follows is no surname: two or more plain words
            }
            wanted = connector || INITIALS.matcher(word).matches() || !bare.equals(word);
            at++;
        }
        return at;
    }

    private static boolean isSigned(List<String> words) {
        boolean joined = words.contains("&") || words.contains("et");
        return words.stream()
                .anyMatch(word -> isAbbreviated(word)
                        || SURE_CONNECTORS.contains(word)
                        || joined && IN_FULL.contains(word.replace(",", "")));
    }

    private static boolean isAbbreviated(String word) {
        return word.endsWith(".") && !NO_AUTHORS.contains(word) && word.length() > 1;
    }
}
