package org.benchleaf.search.index;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/// The words of one question, and which words of names are spelt nearly like them: found once, though the
/// question is put twice, first by spelling and then by sound. For one thread.
public final class SaidNames {
    private final List<SaidWords> parts;
    private final Map<SegmentWords, Map<SaidWords, List<LikeNames.Alike>>> spelt = new IdentityHashMap<>();

    /// @param words folded, in the order said
    public SaidNames(List<String> words) {
        this.parts = SaidWords.of(words);
    }

    /// Each word alone, and neighbours joined.
    List<SaidWords> parts() {
        return parts;
    }

    List<LikeNames.Alike> spelt(SegmentWords words, SaidWords part, Supplier<List<LikeNames.Alike>> find) {
        Map<SaidWords, List<LikeNames.Alike>> known = spelt.computeIfAbsent(words, segment -> new HashMap<>());
        List<LikeNames.Alike> found = known.get(part);
        if (found == null) {
            found = find.get();
            known.put(part, found);
        }
        return found;
    }
}
