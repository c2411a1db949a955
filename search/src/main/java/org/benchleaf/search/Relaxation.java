package org.benchleaf.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.benchleaf.search.index.Tally;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// What giving up would bring.
///
/// @param giveUp the wishes to give up, one or two; never a fixed one
/// @param more how many more plants then meet everything that is left; 1 or more
public record Relaxation(List<Wish> giveUp, int more) {
    public Relaxation {
        giveUp = List.copyOf(giveUp);
    }

    /// Single wishes that bring any, most first; pairs when none does alone.
    static List<Relaxation> of(Need need, Tally tally) {
        List<Relaxation> single = new ArrayList<>();
        List<Relaxation> pairs = new ArrayList<>();
        List<WeighedWish> wishes = need.wishes();
        for (int one = 0; one < wishes.size(); one++) {
            if (wishes.get(one).fixed()) {
                continue;
            }
            Wish wish = wishes.get(one).wish();
            add(single, List.of(wish), tally.allBut(one));
            for (int other = one + 1; other < wishes.size(); other++) {
                if (!wishes.get(other).fixed()) {
                    add(pairs, List.of(wish, wishes.get(other).wish()), tally.allBut(one, other));
                }
            }
        }
        List<Relaxation> found = single.isEmpty() ? pairs : single;
        found.sort(Comparator.comparingInt(Relaxation::more).reversed());
        return found;
    }

    private static void add(List<Relaxation> found, List<Wish> giveUp, int more) {
        if (more > 0) {
            found.add(new Relaxation(giveUp, more));
        }
    }
}
