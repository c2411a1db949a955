package org.benchleaf.search.need;

import java.util.List;
import org.benchleaf.shared.need.Wish;

/// What words may mean as well: offered, not taken.
///
/// @param words as they stood
/// @param wishes the other meaning, at least one
public record OtherReading(String words, List<Wish> wishes) {
    public OtherReading {
        wishes = List.copyOf(wishes);
    }
}
