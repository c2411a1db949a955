package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.util.BytesRef;
import org.benchleaf.search.sound.Sounds;
import org.benchleaf.search.sound.WordTrees;

/// The words in the names of one segment, by spelling and by sound, with the documents that hold each.
///
/// @param spelt the words as trees
/// @param heard their sounds as trees
/// @param firstOfSound where in `bySound` the words of each sound begin, and last its length
/// @param bySound words ordered by sound
/// @param firstDoc where in `docs` the documents of each word begin, and last its length
/// @param docs documents word by word, ascending; those deleted since included
@SuppressWarnings("ArrayRecordComponent") // never compared
record SegmentWords(WordTrees spelt, WordTrees heard, int[] firstOfSound, int[] bySound, int[] firstDoc, int[] docs) {
    static SegmentWords read(LeafReader reader) throws IOException {
        List<String> words = new ArrayList<>();
        Ints firstDoc = new Ints();
        Ints docs = new Ints();
        Terms terms = reader.terms(PlantDocument.WORD);
        if (terms != null) {
            TermsEnum each = terms.iterator();
            PostingsEnum postings = null;
            for (BytesRef term = each.next(); term != null; term = each.next()) {
                words.add(term.utf8ToString());
                firstDoc.add(docs.size());
                postings = each.postings(postings, PostingsEnum.NONE);
                for (int doc = postings.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = postings.nextDoc()) {
                    docs.add(doc);
                }
            }
        }
        firstDoc.add(docs.size());
        return heard(words, firstDoc.array(), docs.array());
    }

    private static SegmentWords heard(List<String> words, int[] firstDoc, int[] docs) {
        String[] sounds = words.stream().map(Sounds::of).toArray(String[]::new);
        int[] bySound = IntStream.range(0, sounds.length)
                .boxed()
                .sorted(Comparator.comparing(word -> sounds[word]))
                .mapToInt(Integer::intValue)
                .toArray();
        List<String> distinct = new ArrayList<>();
        Ints first = new Ints();
        for (int place = 0; place < bySound.length; place++) {
            String sound = sounds[bySound[place]];
            if (distinct.isEmpty() || !distinct.getLast().equals(sound)) {
                distinct.add(sound);
                first.add(place);
            }
        }
        first.add(bySound.length);
        return new SegmentWords(WordTrees.of(words), WordTrees.of(distinct), first.array(), bySound, firstDoc, docs);
    }

    /// Integers one after another.
    private static final class Ints {
        private int[] values = new int[256];
        private int size;

        void add(int value) {
            if (size == values.length) {
                values = Arrays.copyOf(values, size + (size >> 1));
            }
            values[size++] = value;
        }

        int size() {
            return size;
        }

        int[] array() {
            return Arrays.copyOf(values, size);
        }
    }
}
