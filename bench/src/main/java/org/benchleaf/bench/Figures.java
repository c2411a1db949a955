package org.benchleaf.bench;

import java.util.Arrays;
import java.util.Locale;

/// Times of many runs of one thing.
///
/// @param nanos each run in nanoseconds
record Figures(long[] nanos) {
    /// The time within which this share of the runs ended, in milliseconds.
    ///
    /// @param share 0.5 for the median
    double percentile(double share) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        int place = (int) Math.ceil(share * sorted.length) - 1;
        return sorted[Math.max(0, place)] / 1e6;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "p50 %.2f ms, p95 %.2f ms, max %.2f ms", percentile(0.5), percentile(0.95), percentile(1));
    }
}
