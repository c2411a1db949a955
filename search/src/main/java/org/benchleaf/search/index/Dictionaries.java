package org.benchleaf.search.index;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/// The dictionaries of all bases; they outlive rebuilding.
final class Dictionaries {
    private final Map<Basis, Dictionary> byBasis = Collections.unmodifiableMap(new EnumMap<>(
            Arrays.stream(Basis.values()).collect(Collectors.toMap(Function.identity(), Dictionary::new))));

    Dictionary of(Basis basis) {
        return java.util.Objects.requireNonNull(byBasis.get(basis));
    }
}
