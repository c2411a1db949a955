package org.benchleaf.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;

/// How much heap was used.
final class Memory {
    private static final long MEBIBYTE = 1 << 20;

    private Memory() {}

    /// The most that the heap's pools ever held together, garbage included, in MiB.
    static long peakMiB() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .mapToLong(pool -> pool.getPeakUsage().getUsed())
                        .sum()
                / MEBIBYTE;
    }

    /// What is still held after a full collection, in MiB.
    static long liveMiB() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / MEBIBYTE;
    }

    static void forgetPeak() {
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    }
}
