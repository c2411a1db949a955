package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.FixedBitSet;

/// Finds documents by the words of their names.
final class NameQueries {
    /// Enough for every word within two letters of a short one.
    private static final int MOST_SPELLINGS = 1024;
    /// Below this length one letter more or less makes another word.
    private static final int SHORTEST_FOR_ONE = 4;

    private static final int SHORTEST_FOR_TWO = 6;

    private NameQueries() {}

    static Query whole(WrittenName.Kind kind, String folded) {
        return new TermQuery(new Term(PlantDocument.WHOLE, PlantDocument.whole(kind, folded)));
    }

    /// Every word is in a name, the last one perhaps unfinished.
    static Query words(List<String> words) {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        for (int place = 0; place < words.size(); place++) {
            Term term = new Term(PlantDocument.WORD, words.get(place));
            boolean last = place == words.size() - 1;
            all.add(last ? new PrefixQuery(term) : new TermQuery(term), BooleanClause.Occur.FILTER);
        }
        return new ConstantScoreQuery(all.build());
    }

    /// Every word is in a name but for so many letters; fewer in short words.
    static Query misspelt(List<String> words, int edits) {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        for (String word : words) {
            Term term = new Term(PlantDocument.WORD, word);
            int allowed =
                    Math.min(edits, word.length() < SHORTEST_FOR_ONE ? 0 : word.length() < SHORTEST_FOR_TWO ? 1 : 2);
            all.add(
                    allowed == 0 ? new TermQuery(term) : new FuzzyQuery(term, allowed, 0, MOST_SPELLINGS, true),
                    BooleanClause.Occur.FILTER);
        }
        return new ConstantScoreQuery(all.build());
    }

    /// The live documents of each segment that a query matches.
    static List<FixedBitSet> bits(Snapshot snapshot, Query query) throws IOException {
        IndexSearcher searcher = new IndexSearcher(snapshot.reader());
        Weight weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
        List<FixedBitSet> bits = new ArrayList<>();
        for (int number = 0; number < snapshot.segments().size(); number++) {
            Segment segment = snapshot.segments().get(number);
            FixedBitSet found = new FixedBitSet(segment.size() + 1);
            Scorer scorer = weight.scorer(snapshot.reader().leaves().get(number));
            if (scorer != null) {
                DocIdSetIterator documents = scorer.iterator();
                for (int doc = documents.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = documents.nextDoc()) {
                    if (segment.isLive(doc)) {
                        found.set(doc);
                    }
                }
            }
            bits.add(found);
        }
        return bits;
    }

    /// The plants that a query matches, in the order of names.
    static List<Named> named(Snapshot snapshot, Query query, int limit) throws IOException {
        List<FixedBitSet> found = bits(snapshot, query);
        List<Named> named = new ArrayList<>();
        for (int number = 0; number < found.size(); number++) {
            Segment segment = snapshot.segments().get(number);
            FixedBitSet documents = found.get(number);
            TopPlants top = new TopPlants(limit);
            Map<Integer, Integer> docAt = new HashMap<>();
            // one bit more than documents, so that the last one may be asked for its successor
            for (int doc = documents.nextSetBit(0); doc < segment.size(); doc = documents.nextSetBit(doc + 1)) {
                if (top.mayTake(0)) {
                    docAt.put(segment.order()[doc], doc);
                }
                top.offer(0, segment.order()[doc]);
            }
            StoredFields stored = segment.reader().storedFields();
            for (int i = 0; i < top.size(); i++) {
                int place = top.place(i);
                named.add(read(segment, stored, docAt.getOrDefault(place, 0), place));
            }
        }
        named.sort(Comparator.comparing(Named::order).thenComparing(Named::plant));
        return named.size() > limit ? List.copyOf(named.subList(0, limit)) : named;
    }

    private static Named read(Segment segment, StoredFields stored, int doc, int place) throws IOException {
        String order = segment.nameAt(place);
        List<WrittenName> names = new ArrayList<>();
        for (String name : stored.document(doc).getValues(PlantDocument.NAME)) {
            names.add(WrittenName.read(name));
        }
        return new Named(
                PlantDocument.keyIn(order), order.substring(0, order.indexOf(PlantDocument.BEFORE_KEY)), names);
    }
}
