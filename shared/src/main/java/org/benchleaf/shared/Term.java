package org.benchleaf.shared;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A word of a fixed vocabulary, such as `full sun`; implemented by enums.
public interface Term {
    /// The word as it stands in spreadsheets and in the catalog: English, lower case.
    String term();

    /// Reads one term; case, hyphens, underscores and extra blanks do not matter.
    static <E extends Enum<E> & Term> Reading<E> read(Class<E> vocabulary, String text) {
        String wanted = fold(text);
        for (E candidate : vocabulary.getEnumConstants()) {
            if (fold(candidate.term()).equals(wanted) || fold(candidate.name()).equals(wanted)) {
                return Reading.of(candidate);
            }
        }
        return new Reading.Refused<>(Problem.of("term.unknown", text).with("accepted", accepted(vocabulary)));
    }

    /// Reads terms parted by `;`, `,` or `|`; an empty text is the empty set.
    static <E extends Enum<E> & Term> Reading<Set<E>> readSet(Class<E> vocabulary, String text) {
        EnumSet<E> found = EnumSet.noneOf(vocabulary);
        for (String piece : text.split("[;,|]")) {
            if (piece.isBlank()) {
                continue;
            }
            switch (read(vocabulary, piece)) {
                case Reading.Read<E>(E value) -> found.add(value);
                case Reading.Refused<E>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        return Reading.of(Set.copyOf(found));
    }

    /// Writes terms in the order of the vocabulary, parted by `; `.
    static <E extends Enum<E> & Term> String write(Collection<E> terms) {
        return terms.stream().sorted().map(Term::term).collect(Collectors.joining("; "));
    }

    private static String accepted(Class<? extends Term> vocabulary) {
        return Stream.of(vocabulary.getEnumConstants()).map(Term::term).collect(Collectors.joining(", "));
    }

    private static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length());
        boolean gap = false;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '-' || c == '_' || Character.isWhitespace(c)) {
                gap = true;
            } else {
                folded.append(gap && !folded.isEmpty() ? " " : "").append(c);
                gap = false;
            }
        }
        return folded.toString().toLowerCase(Locale.ROOT);
    }
}
