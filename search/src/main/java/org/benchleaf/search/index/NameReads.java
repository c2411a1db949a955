package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.FixedBitSet;

/// Reads names from the index: by whole name, by its beginning, by likeness. Takes as long as what it
/// finds, and not as long as the catalog.
final class NameReads {
    /// A name that so many terms begin with is begun too shortly to look at all of them.
    private static final int MOST_TERMS = 2000;

    /// Nobody shortens a word to more letters.
    private static final int LONGEST_BEGINNING = 5;

    private NameReads() {}

    /// The plants of which a name of this kind, folded, is this; in the order of names.
    static List<Named> whole(Snapshot snapshot, WrittenName.Kind kind, String folded, int limit) throws IOException {
        List<Named> named = new ArrayList<>();
        for (Segment segment : snapshot.segments()) {
            Terms terms = segment.reader().terms(PlantDocument.WHOLE);
            if (terms == null) {
                continue;
            }
            TermsEnum each = terms.iterator();
            if (each.seekExact(new BytesRef(PlantDocument.whole(kind, folded)))) {
                Kept kept = new Kept(segment, limit);
                kept.take(each);
                kept.read(named);
            }
        }
        return inOrder(named, limit);
    }

    /// The plants of which a name of this kind, folded, begins so; by that name.
    static List<Named> beginning(Snapshot snapshot, WrittenName.Kind kind, String folded, int limit)
            throws IOException {
        BytesRef begin = new BytesRef(PlantDocument.whole(kind, folded));
        List<Begun> begun = new ArrayList<>();
        for (Segment segment : snapshot.segments()) {
            Terms terms = segment.reader().terms(PlantDocument.WHOLE);
            if (terms == null) {
                continue;
            }
            TermsEnum each = terms.iterator();
            boolean more = each.seekCeil(begin) != TermsEnum.SeekStatus.END;
            int found = 0;
            for (int read = 0; more && read < MOST_TERMS && found < limit && startsWith(each.term(), begin); read++) {
                String name = each.term().utf8ToString();
                Kept kept = new Kept(segment, limit);
                kept.take(each);
                List<Named> plants = new ArrayList<>();
                kept.read(plants);
                found += plants.size();
                plants.forEach(plant -> begun.add(new Begun(name, plant)));
                more = each.next() != null;
            }
        }
        return begun.stream()
                .sorted(Comparator.comparing(Begun::name)
                        .thenComparing(one -> one.plant().order()))
                .map(Begun::plant)
                .distinct()
                .limit(limit)
                .toList();
    }

    /// The plants whose names are most like what was said, the likeliest first.
    static List<Named> like(Snapshot snapshot, SaidNames said, boolean bySound, int limit) throws IOException {
        LikeNames like = new LikeNames(said, bySound, snapshot.segments());
        List<TopPlants> tops = new ArrayList<>();
        List<Long> ranks = new ArrayList<>();
        for (Segment segment : snapshot.segments()) {
            TopPlants top = like.of(segment, limit);
            tops.add(top);
            for (int i = 0; i < top.size(); i++) {
                ranks.add(top.rank(i));
            }
        }
        ranks.sort(Comparator.reverseOrder());
        long least = ranks.size() <= limit ? 0 : ranks.get(limit - 1);
        List<Named> named = new ArrayList<>();
        for (int number = 0; number < tops.size(); number++) {
            Kept kept = new Kept(snapshot.segments().get(number), limit);
            TopPlants top = tops.get(number);
            for (int i = 0; i < top.size(); i++) {
                if (top.rank(i) >= least) {
                    kept.take(top.place(i));
                }
            }
            kept.read(named);
        }
        return named;
    }

    /// The plants whose names hold these words, the last one perhaps unfinished; in the order of names.
    static List<Named> words(Snapshot snapshot, List<String> words, int limit) throws IOException {
        List<Named> named = new ArrayList<>();
        for (Segment segment : snapshot.segments()) {
            Terms terms = segment.reader().terms(PlantDocument.WORD);
            if (terms == null) {
                continue;
            }
            Kept kept = new Kept(segment, limit);
            Optional<FixedBitSet> whole = holding(terms.iterator(), segment, words.subList(0, words.size() - 1));
            if (whole.isPresent()) {
                FixedBitSet left = whole.get();
                takeBegun(terms.iterator(), new BytesRef(words.getLast()), doc -> {
                    if (left.getAndClear(doc)) {
                        kept.take(segment.order()[doc]);
                    }
                });
            }
            kept.read(named);
        }
        return inOrder(named, limit);
    }

    /// The plants whose names hold words that begin like these; in the order of names.
    static List<Named> wordsBegun(Snapshot snapshot, List<String> words, int limit) throws IOException {
        List<Named> named = new ArrayList<>();
        for (Segment segment : snapshot.segments()) {
            Terms terms = segment.reader().terms(PlantDocument.WORD);
            if (terms == null || !beginsEach(terms.iterator(), words)) {
                continue;
            }
            FixedBitSet all = live(segment);
            for (String word : words) {
                FixedBitSet begun = new FixedBitSet(segment.size());
                takeBegun(terms.iterator(), new BytesRef(word), begun::set);
                all.and(begun);
            }
            Kept kept = new Kept(segment, limit);
            for (int doc = first(all, 0); doc != DocIdSetIterator.NO_MORE_DOCS; doc = first(all, doc + 1)) {
                kept.take(segment.order()[doc]);
            }
            kept.read(named);
        }
        return inOrder(named, limit);
    }

    private static int first(FixedBitSet bits, int from) {
        return from >= bits.length() ? DocIdSetIterator.NO_MORE_DOCS : bits.nextSetBit(from);
    }

    /// Whether each is a word or the short beginning of one: what is misspelt seldom passes, and costs no more than
    /// this.
    private static boolean beginsEach(TermsEnum terms, List<String> words) throws IOException {
        for (String word : words) {
            BytesRef begin = new BytesRef(word);
            if (word.length() > LONGEST_BEGINNING && !terms.seekExact(begin)) {
                return false;
            }
            if (terms.seekCeil(begin) == TermsEnum.SeekStatus.END || !startsWith(terms.term(), begin)) {
                return false;
            }
        }
        return true;
    }

    /// The live documents that hold every word; empty when there are none.
    private static Optional<FixedBitSet> holding(TermsEnum terms, Segment segment, List<String> words)
            throws IOException {
        FixedBitSet all = live(segment);
        for (String word : words) {
            if (!terms.seekExact(new BytesRef(word))) {
                return Optional.empty();
            }
            FixedBitSet holding = new FixedBitSet(segment.size());
            PostingsEnum postings = terms.postings(null, PostingsEnum.NONE);
            for (int doc = postings.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = postings.nextDoc()) {
                holding.set(doc);
            }
            all.and(holding);
        }
        return Optional.of(all);
    }

    private static FixedBitSet live(Segment segment) {
        FixedBitSet all = new FixedBitSet(segment.size());
        all.set(0, segment.size());
        segment.live().ifPresent(live -> all.andNot(deleted(live)));
        return all;
    }

    private static FixedBitSet deleted(Bits live) {
        FixedBitSet deleted = new FixedBitSet(live.length());
        for (int doc = 0; doc < live.length(); doc++) {
            if (!live.get(doc)) {
                deleted.set(doc);
            }
        }
        return deleted;
    }

    private static void takeBegun(TermsEnum terms, BytesRef begin, IntConsumer taken) throws IOException {
        boolean more = terms.seekCeil(begin) != TermsEnum.SeekStatus.END;
        PostingsEnum postings = null;
        while (more && startsWith(terms.term(), begin)) {
            postings = terms.postings(postings, PostingsEnum.NONE);
            for (int doc = postings.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = postings.nextDoc()) {
                taken.accept(doc);
            }
            more = terms.next() != null;
        }
    }

    private static List<Named> inOrder(List<Named> named, int limit) {
        return named.stream()
                .sorted(Comparator.comparing(Named::order).thenComparing(Named::plant))
                .limit(limit)
                .toList();
    }

    private static boolean startsWith(BytesRef term, BytesRef begin) {
        return term.length >= begin.length
                && Arrays.equals(
                        term.bytes,
                        term.offset,
                        term.offset + begin.length,
                        begin.bytes,
                        begin.offset,
                        begin.offset + begin.length);
    }

    /// A plant and the name by which it was found.
    private record Begun(String name, Named plant) {}

    /// The first plants of a segment in the order of names, kept while many more are looked at.
    private static final class Kept {
        private final Segment segment;
        private final TopPlants top;

        Kept(Segment segment, int limit) {
            this.segment = segment;
            this.top = new TopPlants(limit);
        }

        void take(int place) {
            top.offer(0, place);
        }

        void take(TermsEnum term) throws IOException {
            PostingsEnum postings = term.postings(null, PostingsEnum.NONE);
            for (int doc = postings.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = postings.nextDoc()) {
                if (segment.isLive(doc)) {
                    top.offer(0, segment.order()[doc]);
                }
            }
        }

        void read(List<Named> named) throws IOException {
            Map<Integer, String> orders = new HashMap<>();
            int[] places = new int[top.size()];
            for (int i = 0; i < places.length; i++) {
                places[i] = top.place(i);
            }
            Arrays.sort(places);
            List<String> names = segment.namesAt(places);
            int[] docs = new int[places.length];
            for (int i = 0; i < docs.length; i++) {
                docs[i] = segment.docAt()[places[i]];
                orders.put(docs[i], names.get(i));
            }
            Arrays.sort(docs);
            BinaryDocValues written = DocValues.getBinary(segment.reader(), PlantDocument.NAME);
            for (int doc : docs) {
                if (written.advanceExact(doc)) {
                    named.add(named(
                            orders.getOrDefault(doc, ""), written.binaryValue().utf8ToString()));
                }
            }
        }

        private static Named named(String order, String lines) {
            List<WrittenName> written = lines.lines().map(WrittenName::read).toList();
            return new Named(
                    PlantDocument.keyIn(order), order.substring(0, order.indexOf(PlantDocument.BEFORE_KEY)), written);
        }
    }
}
