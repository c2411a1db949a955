package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.benchleaf.catalog.CatalogRevision;

/// One state of the index that is answered from, unchanging while it is held.
///
/// @param reader the files; held open by whoever holds a reference
/// @param segments its segments, in the reader's order
/// @param stock the stock as of that state
/// @param revision the catalog's revision
record Snapshot(DirectoryReader reader, List<Segment> segments, StockColumns stock, CatalogRevision revision) {
    Snapshot {
        segments = List.copyOf(segments);
    }

    /// Reads the columns of segments not seen before and takes over the others.
    static List<Segment> segments(
            DirectoryReader reader, List<Segment> known, Dictionaries dictionaries, KeySlots keySlots)
            throws IOException {
        Map<IndexReader.CacheKey, Segment> byCore = new HashMap<>();
        for (Segment segment : known) {
            byCore.put(core(segment.reader()), segment);
        }
        List<Segment> segments = new ArrayList<>();
        for (LeafReaderContext leaf : reader.leaves()) {
            Segment same = byCore.get(core(leaf.reader()));
            segments.add(same == null ? Segment.read(leaf.reader(), dictionaries, keySlots) : same.with(leaf.reader()));
        }
        return segments;
    }

    Snapshot with(StockColumns newer, CatalogRevision at) {
        return new Snapshot(reader, segments, newer, at);
    }

    private static IndexReader.CacheKey core(LeafReader reader) {
        return reader.getCoreCacheHelper().getKey();
    }
}
