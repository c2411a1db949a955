package org.benchleaf.search.index;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.atomic.AtomicInteger;

/// Numbers values from 0 on as they are met. Safe for many threads.
///
/// @param <T> values with `equals`
final class Codes<T> {
    /// The number of a value never met.
    static final int NONE = -1;

    private final ConcurrentMap<T, Integer> codes = new ConcurrentHashMap<>();
    private final AtomicInteger next = new AtomicInteger();

    int give(T value) {
        return codes.computeIfAbsent(value, fresh -> next.getAndIncrement());
    }

    int find(T value) {
        return codes.getOrDefault(value, NONE);
    }
}
