package org.benchleaf.search.index;

import java.io.IOException;
import org.apache.lucene.index.LeafReader;
import org.jspecify.annotations.Nullable;

/// The words of a segment, read once when first asked for: most programs that open the index look up no misspelt
/// name.
final class LazyWords {
    private final LeafReader reader;
    private volatile @Nullable SegmentWords words;

    LazyWords(LeafReader reader) {
        this.reader = reader;
    }

    /// Called while the segment is held open.
    SegmentWords get() throws IOException {
        SegmentWords known = words;
        return known == null ? read() : known;
    }

    private synchronized SegmentWords read() throws IOException {
        SegmentWords known = words;
        if (known == null) {
            known = SegmentWords.read(reader);
            words = known;
        }
        return known;
    }
}
