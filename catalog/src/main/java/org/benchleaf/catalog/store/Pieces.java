package org.benchleaf.catalog.store;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/// A long list piece by piece, so that only one piece is in memory.
final class Pieces {
    /// Rows whose plants are compared in memory at a time.
    static final int SIZE = 1000;

    private Pieces() {}

    static <T> Iterable<List<T>> of(List<T> all) {
        return () -> new Iterator<>() {
            private final Iterator<T> each = all.iterator();

            @Override
            public boolean hasNext() {
                return each.hasNext();
            }

            @Override
            public List<T> next() {
                List<T> piece = new ArrayList<>();
                while (piece.size() < SIZE && each.hasNext()) {
                    piece.add(each.next());
                }
                return piece;
            }
        };
    }
}
