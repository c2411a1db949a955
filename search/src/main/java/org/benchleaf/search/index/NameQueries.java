package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DocIdSetIterator;
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
    private NameQueries() {}

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
}
