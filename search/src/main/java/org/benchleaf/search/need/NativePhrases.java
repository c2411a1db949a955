package org.benchleaf.search.need;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.need.Wish;

/// `native to Pennsylvania`, `native in PA`, `Pennsylvania native`; plain `native` is in the vocabulary.
final class NativePhrases implements PhraseReader {
    private static final Pattern WORD = Pattern.compile("\\p{L}+\\.?");
    private static final int MOST_WORDS = 4;

    private final Vocabulary words;
    private final Pattern before;
    private final Pattern after;

    NativePhrases(Vocabulary words) {
        this.words = words;
        before = Pattern.compile(words.any("native to") + "\\s+(?:the\\s+state\\s+of\\s+)?");
        after = Pattern.compile("\\s+" + words.any("native"));
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> lead = sentence.match(before, at);
        if (lead.isPresent()) {
            return region(sentence, lead.get().end(), false).map(named -> Taken.of(named.end(), named.wish()));
        }
        return region(sentence, at, true)
                .flatMap(named -> sentence.match(after, named.end()).map(match -> Taken.of(match.end(), named.wish())));
    }

    /// The longest name of a state or province from a place on.
    ///
    /// @param capitals whether a postal code must be in capitals, for `in`, `or` and `me` are words too
    private Optional<Named> region(Sentence sentence, int at, boolean capitals) {
        Optional<Named> longest = Optional.empty();
        Matcher word = WORD.matcher(sentence.plain());
        int next = at;
        for (int count = 0; count < MOST_WORDS && word.find(next) && word.start() == next; count++) {
            int end = word.end();
            String text = sentence.words(at, end);
            boolean code = text.length() == 2;
            if (!code || !capitals || text.equals(text.toUpperCase(java.util.Locale.ROOT))) {
                Optional<Region> region = words.region(text);
                longest = region.isPresent() ? Optional.of(new Named(end, new Wish.NativeTo(region))) : longest;
            }
            next = Math.min(sentence.plain().length(), end + 1);
        }
        return longest;
    }

    private record Named(int end, Wish wish) {}
}
