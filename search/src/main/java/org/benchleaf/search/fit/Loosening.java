package org.benchleaf.search.fit;

import org.benchleaf.shared.need.Wish;

/// By how much to loosen one wish, and what that brings.
///
/// @param wish as asked
/// @param loosened in its place
/// @param more how many more plants then meet every wish; 1 or more
public record Loosening(Wish wish, Wish loosened, int more) {}
