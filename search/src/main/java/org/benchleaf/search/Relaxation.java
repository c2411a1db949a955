package org.benchleaf.search;

import java.util.List;
import org.benchleaf.shared.need.Wish;

/// What giving up would bring.
///
/// @param giveUp the wishes to give up, one or two; never a fixed one
/// @param more how many more plants then meet everything that is left; 1 or more
public record Relaxation(List<Wish> giveUp, int more) {
    public Relaxation {
        giveUp = List.copyOf(giveUp);
    }
}
