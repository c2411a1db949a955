package org.benchleaf.search.need;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.stock.StockSize;

/// `40 in #3`, `#5`, `3 gal`, `25 of 19 cm pots`, `2.5 in caliper B&B`, `5-6 ft B&B`, and a bare count such as
/// the one in `40 evergreen shrubs`.
final class SizePhrases implements PhraseReader {
    private final Vocabulary words;
    private final Pattern sized;
    private final Pattern counted;
    private final Pattern rootsAlone;

    SizePhrases(Vocabulary words) {
        this.words = words;
        String named = words.table("roots").isEmpty() ? "b&b" : words.any("roots");
        String roots = "(?:\\s*" + named + ")";
        String count = "(?:(?:" + words.any("quantity") + "\\s*:?\\s*)?(?<count>\\d{1,6})\\s*(?:" + words.any("pieces")
                + "\\s*)?(?:" + words.any("in") + "\\s*)?)?(?:" + words.any("in") + "\\s+)?";
        String size = "(?<mark>#\\s?(?:sp)?\\d{1,3}|no\\.?\\s?\\d{1,3})s?"
                + "|(?<gallons>\\d{1,3})\\s?" + words.any("gallon") + "\\.?"
                + "|(?<pot>\\d{1,2}\\s?cm(?=\\s*" + words.any("pots") + "))"
                + "|(?<caliper>\\d{1,2}(?:\\.\\d{1,2})?\\s?(?:inches|inch|in|\")\\.?\\s?cal(?:iper)?\\.?" + roots + "?)"
                + "|(?<height>\\d{1,3}\\s?(?:-|to)\\s?\\d{1,3}\\s?(?:ft|feet|'|in|inches|\")" + roots + ")";
        sized = Pattern.compile(count + "(?:" + size + ")(?:\\s*" + words.any("pots") + ")?");
        counted = Pattern.compile("(?:" + words.any("quantity")
                + "\\s*:?\\s*)?(?<count>\\d{1,6})(?!\\s*[%/.\\-])(?:\\s*" + words.any("pieces") + ")?");
        rootsAlone = Pattern.compile(named);
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> found = sentence.match(sized, at);
        if (found.isPresent()) {
            Optional<Taken> taken = sized(sentence, at, found.get());
            if (taken.isPresent()) {
                return taken;
            }
        }
        Optional<Taken> roots = rootsAlone(sentence, at);
        if (roots.isPresent()) {
            return roots;
        }
        return sentence.match(counted, at).flatMap(match -> {
            Optional<Integer> count = count(match);
            return count.map(number ->
                    Taken.ofStock(match.end(), new Taken.StockPart(count, Optional.empty(), Optional.empty())));
        });
    }

    /// How the roots come is a part of a size and no wish of its own.
    private Optional<Taken> rootsAlone(Sentence sentence, int at) {
        return sentence.match(rootsAlone, at)
                .map(match -> Taken.of(match.end(), List.of())
                        .with(new Note("roots-with-size", sentence.words(at, match.end()), "")));
    }

    private Optional<Taken> sized(Sentence sentence, int at, Matcher match) {
        String gallons = match.group("gallons");
        String written = gallons != null ? "#" + gallons : firstGroup(match);
        return StockSize.read(written).toOptional().map(size -> {
            Taken taken =
                    Taken.ofStock(match.end(), new Taken.StockPart(count(match), Optional.of(size), Optional.empty()));
            return gallons == null
                    ? taken
                    : taken.with(new Note("size-class-not-gallon", sentence.words(at, match.end()), size.toString()));
        });
    }

    private String firstGroup(Matcher match) {
        for (String name : new String[] {"mark", "pot", "caliper", "height"}) {
            String text = match.group(name);
            if (text != null) {
                return withRoots(text).replaceFirst("^no\\.?\\s?", "#");
            }
        }
        return "";
    }

    /// The size with the word for its roots as lists write it.
    private String withRoots(String size) {
        return words.table("roots").entrySet().stream()
                .filter(root -> size.endsWith(root.getKey()))
                .max(Comparator.comparingInt(root -> root.getKey().length()))
                .map(root -> size.substring(0, size.length() - root.getKey().length())
                                .strip() + " " + root.getValue())
                .orElse(size);
    }

    private static Optional<Integer> count(Matcher match) {
        return Optional.ofNullable(match.group("count")).map(Integer::valueOf).filter(count -> count > 0);
    }
}
