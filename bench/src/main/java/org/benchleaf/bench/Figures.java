package org.benchleaf.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.IntConsumer;

/// Times of many runs of one thing, and what they cost the processors.
///
/// @param nanos each run in nanoseconds
/// @param cpuNanos of all threads of the program, a run on the average: this one says the same on a busy machine
record Figures(long[] nanos, OptionalLong cpuNanos) {
    /// Times alone, of what ran elsewhere or side by side.
    Figures(long[] nanos) {
        this(nanos, OptionalLong.empty());
    }

    /// Takes the time of each run.
    ///
    /// @param run told its number, from 0 on
    static Figures of(int runs, IntConsumer run) {
        long[] nanos = new long[runs];
        long cpuBefore = cpu();
        for (int i = 0; i < runs; i++) {
            long before = System.nanoTime();
            run.accept(i);
            nanos[i] = System.nanoTime() - before;
        }
        return new Figures(nanos, OptionalLong.of((cpu() - cpuBefore) / runs));
    }

    /// Processor time of the whole program so far, in nanoseconds.
    static long cpu() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

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
        String times = String.format(
                Locale.ROOT, "p50 %.2f ms, p95 %.2f ms, max %.2f ms", percentile(0.5), percentile(0.95), percentile(1));
        return cpuNanos.isPresent()
                ? times + String.format(Locale.ROOT, ", %.2f ms of processor", cpuNanos.getAsLong() / 1e6)
                : times;
    }
}
