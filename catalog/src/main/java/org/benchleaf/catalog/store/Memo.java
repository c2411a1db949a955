package org.benchleaf.catalog.store;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/// Remembers what stored texts mean: a catalog says `full sun` thousands of times and reads it once.
///
/// @param <T> an immutable value
final class Memo<T> {
    /// Texts remembered; those beyond are read each time.
    private static final int MOST = 4096;
    /// Longer ones are prose, seldom said twice.
    private static final int LONGEST = 80;

    private final Function<String, T> reader;
    private final Map<String, T> known = new ConcurrentHashMap<>();

    Memo(Function<String, T> reader) {
        this.reader = reader;
    }

    T of(String text) {
        T remembered = known.get(text);
        if (remembered != null) {
            return remembered;
        }
        T read = reader.apply(text);
        if (text.length() <= LONGEST && known.size() < MOST) {
            known.put(text, read);
        }
        return read;
    }
}
