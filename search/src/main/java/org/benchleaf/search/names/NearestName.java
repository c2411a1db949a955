package org.benchleaf.search.names;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.sound.SoundDistance;
import org.benchleaf.search.sound.Sounds;

/// Which of some names is, as a whole, the nearest to what was typed or said: for short lists that no index holds,
/// looked through name by name. The bounds are ours, no source.
public final class NearestName {
    /// A name with one letter, or as much of its sound, amiss in so many is clear: with one in five `citrus` sounds as
    /// *Cedrus*.
    private static final int A_SIXTH = 6;

    private static final int A_QUARTER = 4;
    /// What is shorter is near to too much.
    private static final int SHORTEST = 4;

    private final List<String> words;
    private final String letters;
    private final String sounds;

    /// @param typed what was typed or said
    public NearestName(String typed) {
        this.words = FoldedName.words(typed);
        this.letters = String.join(" ", words);
        this.sounds = Sounds.of(words);
    }

    /// The name that is nearest; empty when all are too far to be meant. Of equals the first.
    public Optional<String> among(Stream<String> names) {
        return names.flatMap(name -> to(name).stream().map(near -> Map.entry(near, name)))
                .min(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue);
    }

    /// What is amiss.
    ///
    /// @param heard whether only its sound is near
    /// @param letters how many letters; 0 where only the sound counts
    /// @param unlike how unlike it sounds
    private record Near(boolean heard, int letters, int unlike) implements Comparable<Near> {
        private static final Comparator<Near> ORDER =
                Comparator.comparing(Near::heard).thenComparing(Near::letters).thenComparing(Near::unlike);

        @Override
        public int compareTo(Near other) {
            return ORDER.compare(this, other);
        }
    }

    private Optional<Near> to(String name) {
        if (letters.length() < SHORTEST) {
            return Optional.empty();
        }
        List<String> own = FoldedName.words(name);
        int weight = SoundDistance.weight(sounds);
        int unlike = SoundDistance.between(sounds, Sounds.of(own), weight);
        // one letter in a short name, when it sounds alike: `mapel` is maple, and `grape` is not Grace
        int few = Math.max(letters.length() / A_SIXTH, unlike <= weight / A_QUARTER ? 1 : 0);
        int edits = Spelling.edits(letters, String.join(" ", own), few);
        if (edits <= few && isSpeltWordByWord(own)) {
            return Optional.of(new Near(false, edits, unlike));
        }
        return unlike <= weight / A_SIXTH ? Optional.of(new Near(true, 0, unlike)) : Optional.empty();
    }

    /// *Conium maculatum* is two letters off *Lamium maculatum*, both of them in one word.
    private boolean isSpeltWordByWord(List<String> own) {
        return words.size() != own.size()
                || IntStream.range(0, own.size()).allMatch(place -> {
                    String word = words.get(place);
                    return Spelling.edits(word, own.get(place)) <= Math.max(1, word.length() / A_SIXTH);
                });
    }
}
