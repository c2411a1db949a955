package org.benchleaf.search.index;

import java.util.Objects;
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

    private final ConcurrentMap<Integer, T> values = new ConcurrentHashMap<>();

    int give(T value) {
        return codes.computeIfAbsent(value, fresh -> {
            int code = next.getAndIncrement();
            values.put(code, fresh);
            return code;
        });
    }

    /// How many are numbered.
    int count() {
        return next.get();
    }

    /// The value of a number that was given.
    T value(int code) {
        return Objects.requireNonNull(values.get(code));
    }

    int find(T value) {
        return codes.getOrDefault(value, NONE);
    }
}
