package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;

/// `safe for dogs`, `non-toxic to horses and cats`, `pet friendly`; `non-toxic` alone is meant for people.
final class SafePhrases implements PhraseReader {
    private final Vocabulary words;
    private final Pattern before;
    private final Pattern after;

    SafePhrases(Vocabulary words) {
        this.words = words;
        String creature = words.any("creatures");
        String creatures =
                "(?<who>" + creature + ")(?:\\s*(?:,|&|" + words.any("and") + ")\\s*(?<who2>" + creature + "))?";
        before = Pattern.compile(words.any("safe") + "(?:\\s+" + words.any("safe for") + ")?\\s+" + creatures);
        after = Pattern.compile(creatures + "\\s+" + words.any("safe"));
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return sentence.match(before, at)
                .or(() -> sentence.match(after, at))
                .map(this::taken)
                .or(() -> toPeople(sentence, at));
    }

    private Taken taken(Matcher match) {
        List<Wish> wishes = new ArrayList<>(wishes(match.group("who")));
        if (match.group("who2") != null) {
            wishes.addAll(wishes(match.group("who2")));
        }
        return Taken.of(match.end(), wishes);
    }

    private List<Wish> wishes(String creatures) {
        return words
                .meaning("creatures", creatures)
                .flatMap(text -> Term.readSet(Creature.class, text).toOptional())
                .stream()
                .flatMap(set -> set.stream().sorted())
                .<Wish>map(Wish.SafeFor::new)
                .toList();
    }

    private Optional<Taken> toPeople(Sentence sentence, int at) {
        return sentence.phrase(words, "safe", at)
                .filter(phrase -> sentence.words(at, phrase.end()).length() > "friendly".length())
                .map(phrase -> Taken.of(phrase.end(), new Wish.SafeFor(Creature.PEOPLE))
                        .with(new Note("safe-for-people", sentence.words(at, phrase.end()), Creature.PEOPLE.term())));
    }
}
