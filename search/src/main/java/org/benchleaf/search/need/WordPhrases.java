package org.benchleaf.search.need;

import java.util.Optional;
import org.benchleaf.shared.need.WeighedWish;

/// The phrases of the vocabulary: wishes, and words such as `if possible` that say how much a wish counts.
final class WordPhrases implements PhraseReader {
    /// A wish that is only preferred. Ours, no source.
    static final double PREFERRED = 0.5;

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
            Taken taken = Taken.of(phrase.end(), meaning.wishes());
            return meaning.note()
                    .map(key -> taken.with(new Note(key, sentence.words(at, phrase.end()), "")))
                    .orElse(taken);
        });
    }

    private Optional<Taken> manner(Sentence sentence, int at) {
        return sentence.phrase(words, "perhaps", at)
                .map(phrase -> Taken.ofManner(
                        phrase.end(),
                        phrase.meaning().equals("before") ? Taken.Manner.PERHAPS_BEFORE : Taken.Manner.PERHAPS_AFTER))
                .or(() -> sentence.phrase(words, "must", at)
                        .map(phrase -> Taken.ofManner(phrase.end(), Taken.Manner.MUST_AFTER)));
    }

    static WeighedWish preferred(WeighedWish wish) {
        return new WeighedWish(wish.wish(), wish.weight() * PREFERRED, false);
    }
}
