package org.benchleaf.shared.need;

import java.util.List;

/// What a customer asks: wishes in the order they were said.
///
/// @param wishes may be empty, which every plant meets
public record Need(List<WeighedWish> wishes) {
    public Need {
        wishes = List.copyOf(wishes);
    }

    public static Need of(Wish... wishes) {
        return new Need(java.util.Arrays.stream(wishes).map(WeighedWish::of).toList());
    }
}
