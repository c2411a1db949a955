package org.benchleaf.search.need;

import org.benchleaf.shared.need.WeighedWish;

/// Words of a sentence and what they were read as.
///
/// @param words as they stood
/// @param wish the wish; several words may add to one, as `40 in #3` and `by mid April` do
public record Understood(String words, WeighedWish wish) {}
