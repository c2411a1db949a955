package org.benchleaf.app.service;

import java.util.OptionalDouble;

/// Hears how far the loading of a long file is.
public interface LoadProgress {
    /// Nobody listens.
    LoadProgress UNHEARD = new LoadProgress() {
        @Override
        public void read(long rows, OptionalDouble share) {}

        @Override
        public void written(long rows, long of) {}
    };

    /// @param rows read so far
    /// @param share of the file, 0 to 1; empty for a workbook that does not say how long it is
    void read(long rows, OptionalDouble share);

    /// @param rows written so far
    /// @param of how many there are
    void written(long rows, long of);
}
