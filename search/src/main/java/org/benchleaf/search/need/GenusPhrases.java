package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.need.Wish;

/// `hydrangea`, `no boxwood or holly`: a genus asked for or ruled out, by its Latin or its usual English name.
final class GenusPhrases implements PhraseReader {
    private final Vocabulary words;
    private final Pattern without;
    private final Pattern another;

    GenusPhrases(Vocabulary words) {
        this.words = words;
        without = Pattern.compile(words.any("without") + "\\s+");
        another = Pattern.compile("\\s*(?:/|" + words.any("and") + ")\\s+(?:" + words.any("without") + "\\s+)?");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> no = sentence.match(without, at);
        if (no.isEmpty()) {
            return genus(sentence, at).map(found -> Taken.of(found.end(), new Wish.OfGenus(found.meaning())));
        }
        List<Wish> wishes = new ArrayList<>();
        int end = at;
        Optional<Sentence.Phrase> next = genus(sentence, no.get().end());
        while (next.isPresent()) {
            wishes.add(new Wish.NotOfGenus(next.get().meaning()));
            end = next.get().end();
            next = sentence.match(another, end).flatMap(match -> genus(sentence, match.end()));
        }
        return wishes.isEmpty() ? Optional.empty() : Optional.of(Taken.of(end, wishes));
    }

    private Optional<Sentence.Phrase> genus(Sentence sentence, int at) {
        return sentence.phrase(words, "genera", at);
    }
}
