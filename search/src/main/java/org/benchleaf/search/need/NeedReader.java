package org.benchleaf.search.need;

import java.time.LocalDate;

/// Reads what a customer says into wishes. Holds no state and may be shared between threads.
public final class NeedReader {
    private final Vocabulary vocabulary;

    public NeedReader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /// Reads a sentence; never fails, for what is not understood is listed.
    ///
    /// @param sentence as typed or dictated
    /// @param today the day from which dates without a year are counted
    public NeedReading read(String sentence, LocalDate today) {
        throw new UnsupportedOperationException("not built yet: " + vocabulary + sentence + today);
    }
}
