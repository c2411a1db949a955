package org.benchleaf.search.names;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.SaidWords;
import org.benchleaf.search.index.WrittenName;
import org.benchleaf.search.sound.SoundDistance;
import org.benchleaf.search.sound.Sounds;
import org.benchleaf.shared.code.PlantKey;

/// Compares what was typed or said with all names of a plant: first letter by letter, then sound by
/// sound, the bounds between words free to move. Made for one question; used by one thread.
final class Likeness {
    private static final int FAR = 1_000_000;
    /// A word said that is in no name of the plant, as `plant` or `bush` may be, costs as much as so many
    /// sounds amiss.
    private static final int EXTRA_SOUND = 4;

    private static final int EXTRA_WORD = 6;

    private final List<String> words;
    private final List<SaidWords> said;
    private final String sounds;
    private final Map<PlantKey, NameWords> names = new HashMap<>();
    private final Map<String, String> heard = new HashMap<>();
    private final Map<String, int[]> edits = new HashMap<>();
    private final Map<String, int[]> unlike = new HashMap<>();

    Likeness(List<String> words) {
        this.words = words;
        this.said = SaidWords.of(words);
        this.sounds = Sounds.of(words);
    }

    /// How a plant's names match, by the surest way; empty when they are too far off.
    ///
    /// @param least the least sure way that counts
    Optional<Guess> of(Named named, NameMatch least) {
        NameWords names = names(named);
        int unsaid = names.accepted() - words.size();
        for (int most = 1; most <= 2; most++) {
            int cost = fewestEdits(names, most);
            if (cost < FAR) {
                NameMatch how = most == 1 ? NameMatch.ONE_EDIT : NameMatch.TWO_EDITS;
                return Optional.of(new Guess(named, how, cost, unlike(names), unsaid));
            }
        }
        if (least != NameMatch.SOUNDS_ALIKE) {
            return Optional.empty();
        }
        int cost = unlike(names);
        return cost <= farthest()
                ? Optional.of(new Guess(named, NameMatch.SOUNDS_ALIKE, cost, cost, unsaid))
                : Optional.empty();
    }

    /// What sounds less alike is another name; half of what was said must be in it.
    private int farthest() {
        int half = SoundDistance.weight(sounds) / 2;
        return Math.min(half, 2 + sounds.length() * 3 / 2);
    }

    /// Letters amiss when every word said is one of the plant's, alone or joined with its neighbour.
    private int fewestEdits(NameWords names, int most) {
        return cheapest(FAR, (part, place) -> {
            int allowed = part.count() > 2 ? -1 : part.edits(most);
            int least = FAR;
            for (String word : names.words()) {
                int cost = edits(word)[place];
                if (cost <= allowed && cost < least) {
                    least = cost;
                }
            }
            return least;
        });
    }

    /// How unlike what was said a plant's names sound; 0 when one sounds just so, however it is parted
    /// into words.
    private int unlike(NameWords names) {
        return Math.min(leastUnlike(names), nearestName(names));
    }

    private int leastUnlike(NameWords names) {
        return cheapest(1, (part, place) -> {
            int least = part.mostUnlike();
            boolean found = false;
            for (String word : names.words()) {
                int cost = unlike(word)[place];
                if (cost <= least) {
                    least = cost;
                    found = true;
                }
            }
            return found ? least : FAR;
        });
    }

    /// The cheapest way to cut the words said into parts.
    ///
    /// @param extra factor of the cost of leaving a word out; `FAR` for never
    private int cheapest(int extra, Cost cost) {
        int[] best = new int[words.size() + 1];
        Arrays.fill(best, FAR);
        best[0] = 0;
        for (int place = 0; place < said.size(); place++) {
            SaidWords part = said.get(place);
            int from = best[part.first()];
            if (from >= FAR) {
                continue;
            }
            int to = part.first() + part.count();
            best[to] = Math.min(best[to], from + cost.of(part, place));
            if (part.count() == 1 && extra < FAR) {
                best[to] = Math.min(
                        best[to],
                        from + extra * (EXTRA_WORD + EXTRA_SOUND * part.sounds().length()));
            }
        }
        return Math.min(FAR, best[words.size()]);
    }

    private int nearestName(NameWords names) {
        return names.whole().stream().mapToInt(this::unlike).min().orElse(FAR);
    }

    private int unlike(WholeName name) {
        return SoundDistance.withinName(
                sounds, name.words().stream().map(this::heard).toList(), 1);
    }

    /// The name to show: the one nearest to what was typed or said.
    String nearest(Named named, NameMatch how) {
        if (how != NameMatch.SOUNDS_ALIKE) {
            String spelt = Spelling.nearest(words, named);
            if (Spelling.distance(words, FoldedName.words(spelt)) <= 2 * words.size()) {
                return spelt;
            }
        }
        return names(named).whole().stream()
                .min(Comparator.comparingInt(this::unlike))
                .map(WholeName::text)
                .orElse(named.order());
    }

    private int[] edits(String word) {
        int[] known = edits.get(word);
        if (known == null) {
            known = new int[said.size()];
            for (int place = 0; place < known.length; place++) {
                known[place] = edits(said.get(place), word);
            }
            edits.put(word, known);
        }
        return known;
    }

    private static int edits(SaidWords part, String word) {
        boolean near = part.count() <= 2 && Math.abs(part.letters().length() - word.length()) <= 2;
        int cost = near ? Spelling.edits(part.letters(), word, 2) : FAR;
        return cost <= 2 ? cost : FAR;
    }

    private int[] unlike(String word) {
        int[] known = unlike.get(word);
        if (known == null) {
            String heard = heard(word);
            known = new int[said.size()];
            for (int place = 0; place < known.length; place++) {
                known[place] = unlike(said.get(place), heard);
            }
            unlike.put(word, known);
        }
        return known;
    }

    private static int unlike(SaidWords part, String heard) {
        int most = part.mostUnlike();
        boolean near = Math.abs(part.sounds().length() - heard.length()) * 3 <= most + 2;
        return near ? SoundDistance.between(part.sounds(), heard, most) : FAR;
    }

    /// A plant that may be meant.
    ///
    /// @param cost letters amiss, or how unlike it sounds
    /// @param unlike how unlike it sounds
    /// @param unsaid words its accepted name has more than were said; negative when it has fewer
    record Guess(Named named, NameMatch how, int cost, int unlike, int unsaid) {
        /// Whether another is told by the same way and is as many letters, or as much of its sound, off.
        boolean isAsFarAs(Guess other) {
            return how == other.how && cost == other.cost;
        }
    }

    /// What a part said costs.
    private interface Cost {
        int of(SaidWords part, int place);
    }

    private NameWords names(Named named) {
        return names.computeIfAbsent(named.plant(), plant -> wordsOf(named));
    }

    private static NameWords wordsOf(Named named) {
        List<WholeName> whole = new ArrayList<>();
        LinkedHashSet<String> all = new LinkedHashSet<>();
        for (WrittenName name : named.names()) {
            List<String> own = FoldedName.words(name.text());
            for (int at = 0; at < own.size(); at++) {
                all.add(own.get(at));
                if (at + 1 < own.size()) {
                    all.add(own.get(at) + own.get(at + 1));
                }
            }
            whole.add(new WholeName(name.text(), own));
        }
        return new NameWords(List.copyOf(all), whole);
    }

    private String heard(String word) {
        return heard.computeIfAbsent(word, Sounds::of);
    }

    /// The words of a plant's names, neighbours joined too, and its whole names.
    private record NameWords(List<String> words, List<WholeName> whole) {
        /// How many words the accepted name has.
        int accepted() {
            return whole.isEmpty() ? 0 : whole.getFirst().words().size();
        }
    }

    /// A name, word by word.
    private record WholeName(String text, List<String> words) {}
}
