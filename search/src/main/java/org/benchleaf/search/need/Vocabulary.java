package org.benchleaf.search.need;

import java.util.Collection;

/// The words of a language that needs are read with.
public final class Vocabulary {
    private Vocabulary() {}

    /// The words that come with the program.
    public static Vocabulary english() {
        return new Vocabulary();
    }

    /// This vocabulary, and the names of these genera, capital first.
    public Vocabulary withGenera(Collection<String> genera) {
        return this;
    }
}
