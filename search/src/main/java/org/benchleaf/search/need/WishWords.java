package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.need.Wish;

/// What a phrase of the vocabulary means: one or more wishes, what they may be as well, how doubtful words were
/// taken.
///
/// @param wishes at least one
/// @param others what the phrase may mean as well
/// @param note key of a note, when there is something to say
/// @param weight how much each of the wishes counts
record WishWords(List<Wish> wishes, List<List<Wish>> others, Optional<String> note, double weight) {
    /// Reads `light full shade + soil dry | light part shade + soil dry ~ shade-is-full`: wishes joined by `+`, other
    /// meanings after `|`, the key of a note after `~`, a weight for each after `*`.
    ///
    /// @throws IllegalArgumentException when it is no wish
    static WishWords read(String expression) {
        String[] halves = expression.split("~");
        String[] weighed = halves[0].split("\\*");
        List<List<Wish>> meanings = new ArrayList<>();
        for (String meaning : weighed[0].split("\\|")) {
            meanings.add(Arrays.stream(meaning.split("\\+"))
                    .map(wish -> WishExpression.read(wish.strip()))
                    .toList());
        }
        return new WishWords(
                meanings.getFirst(),
                List.copyOf(meanings.subList(1, meanings.size())),
                Arrays.stream(halves).skip(1).map(String::strip).findFirst(),
                weighed.length > 1 ? Double.parseDouble(weighed[1].strip()) : 1);
    }
}
