package org.benchleaf.search.need;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// The phrases of the vocabulary: wishes, and words such as `if possible` that say how much a wish counts.
final class WordPhrases implements PhraseReader {
    /// A wish that is only preferred. Ours, no source.
    static final double PREFERRED = 0.5;

    private static final double STRESSED = 2;

    private final Vocabulary words;

    WordPhrases(Vocabulary words) {
        this.words = words;
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return wish(sentence, at).or(() -> manner(sentence, at));
    }

    private Optional<Taken> wish(Sentence sentence, int at) {
        return sentence.phrase(words, "wishes", at).map(phrase -> {
            WishWords meaning = WishWords.read(phrase.meaning());
            Taken plain = Taken.of(phrase.end(), meaning.wishes()).weighing(meaning.weight());
            Taken taken = plain;
            for (List<Wish> other : meaning.others()) {
                taken = taken.or(other);
            }
            Taken read = taken;
            return meaning.note()
                    .map(key -> read.with(new Note(key, sentence.words(at, phrase.end()), "")))
                    .orElse(read);
        });
    }

    private Optional<Taken> manner(Sentence sentence, int at) {
        return sentence.phrase(words, "perhaps", at)
                .map(phrase -> Taken.ofManner(
                        phrase.end(),
                        phrase.meaning().equals("before") ? Taken.Manner.PERHAPS_BEFORE : Taken.Manner.PERHAPS_AFTER))
                .or(() -> sentence.phrase(words, "must", at)
                        .map(phrase -> Taken.ofManner(phrase.end(), Taken.Manner.MUST_AFTER)))
                .or(() -> sentence.phrase(words, "above all", at)
                        .map(phrase -> Taken.ofManner(
                                phrase.end(),
                                phrase.meaning().equals("before")
                                        ? Taken.Manner.STRONG_BEFORE
                                        : Taken.Manner.STRONG_AFTER)));
    }

    /// A wish that counts more than others. Ours, no source.
    static WeighedWish stressed(WeighedWish wish) {
        return wish.weighing(Math.min(10, wish.weight() * STRESSED));
    }

    static WeighedWish preferred(WeighedWish wish) {
        return new WeighedWish(wish.wish(), wish.weight() * PREFERRED, false);
    }
}
