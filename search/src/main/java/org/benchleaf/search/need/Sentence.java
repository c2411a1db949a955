package org.benchleaf.search.need;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A sentence made easy to read, letter by letter as long as the original: lower case, no accents, straight quotes,
/// blanks in the place of hyphens between words.
///
/// @param original as typed
/// @param plain the same length
record Sentence(String original, String plain) {
    private static final Pattern WORD = Pattern.compile("\\p{L}+(?:'\\p{L}+)?");
    private static final int LONGEST_PHRASE = 5;

    static Sentence of(String text) {
        String original = text.strip();
        StringBuilder plain = new StringBuilder(original.length());
        for (int i = 0; i < original.length(); i++) {
            char c = original.charAt(i);
            plain.append(
                    switch (c) {
                        case '’', '‘', '′' -> '\'';
                        case '“', '”', '″' -> '"';
                        case '–', '—', '‑' -> '-';
                        case '\u00a0', '\t', '\n', '\r' -> ' ';
                        default -> plain(c);
                    });
        }
        String joined = plain.toString().replaceAll("(?<=\\p{L})-(?=\\p{L})", " ");
        return new Sentence(original, joined);
    }

    /// A phrase as sentences are read: lower case, no accents.
    static String plain(String phrase) {
        StringBuilder plain = new StringBuilder(phrase.length());
        phrase.chars().forEach(c -> plain.append(plain((char) c)));
        return plain.toString();
    }

    private static char plain(char c) {
        char lower = Character.toLowerCase(c);
        if (lower < 0x80) {
            return lower;
        }
        String parts = Normalizer.normalize(String.valueOf(lower), Normalizer.Form.NFD);
        return parts.length() > 1 && Character.isLetter(parts.charAt(0)) ? parts.charAt(0) : lower;
    }

    /// A pattern that matches from a place on and ends at the end of a word.
    Optional<Matcher> match(Pattern pattern, int at) {
        Matcher matcher = pattern.matcher(plain).region(at, plain.length());
        matcher.useTransparentBounds(true);
        return matcher.lookingAt() && isEdge(matcher.end()) ? Optional.of(matcher) : Optional.empty();
    }

    private boolean isEdge(int end) {
        return end >= plain.length()
                || !Character.isLetterOrDigit(plain.charAt(end - 1))
                || !Character.isLetterOrDigit(plain.charAt(end));
    }

    /// The longest phrase of a table from a place on.
    Optional<Phrase> phrase(Vocabulary vocabulary, String section, int at) {
        List<Integer> ends = new ArrayList<>();
        Matcher word = WORD.matcher(plain);
        int next = at;
        while (ends.size() < LONGEST_PHRASE && next < plain.length() && word.find(next) && word.start() == next) {
            ends.add(word.end());
            next = word.end() + 1;
            if (word.end() < plain.length() && plain.charAt(word.end()) != ' ') {
                break;
            }
        }
        for (int end : ends.reversed()) {
            Optional<String> meaning = vocabulary.meaning(section, plain.substring(at, end));
            if (meaning.isPresent()) {
                return Optional.of(new Phrase(end, meaning.get()));
            }
        }
        return Optional.empty();
    }

    /// The first place that is no blank.
    int skipBlanks(int at) {
        int next = at;
        while (next < plain.length() && plain.charAt(next) == ' ') {
            next++;
        }
        return next;
    }

    /// The words as they stood, without what ends them.
    String words(int from, int to) {
        return original.substring(from, to).strip().replaceAll("[.,;:]+$", "");
    }

    /// A phrase found.
    ///
    /// @param end where it ends
    /// @param meaning what the vocabulary says of it
    record Phrase(int end, String meaning) {}
}
