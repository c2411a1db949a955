package org.benchleaf.search.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;
import org.benchleaf.shared.code.PlantKey;

/// The columns of one segment of the index, read once when it is opened.
///
/// @param reader the segment
/// @param columns a column a basis, in their order
/// @param order place of each document in the order of names within the segment
/// @param docAt the document at each place in that order; of two versions of a plant the one that counts
/// @param beginnings the first eight letters of the name at each place in that order, as bytes
/// @param keys the plant key at each place in that order, packed
/// @param slots slot of each document in the stock
/// @param merits what each plant is worth whatever is asked
/// @param words the words of its names, read when a name is first looked for that nobody has
@SuppressWarnings("ArrayRecordComponent") // never compared
record Segment(
        LeafReader reader,
        Column[] columns,
        int[] order,
        int[] docAt,
        long[] beginnings,
        long[] keys,
        int[] slots,
        byte[] merits,
        LazyWords words) {
    static Segment read(LeafReader reader, Dictionaries dictionaries, KeySlots keySlots) throws IOException {
        CompletableFuture<Column[]> columns = CompletableFuture.supplyAsync(() -> columns(reader, dictionaries));
        SortedDocValues names = DocValues.getSorted(reader, PlantDocument.ORDER);
        long[] beginnings = new long[names.getValueCount()];
        long[] keys = new long[names.getValueCount()];
        for (int name = 0; name < keys.length; name++) {
            BytesRef written = names.lookupOrd(name);
            beginnings[name] = beginning(written);
            keys[name] = packedKey(written);
        }
        int[] order = new int[reader.maxDoc()];
        int[] docAt = new int[names.getValueCount()];
        int[] slots = new int[reader.maxDoc()];
        Bits live = reader.getLiveDocs();
        // slots are given in the order of documents, so that a pass reads the stock from front to back
        for (int doc = names.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = names.nextDoc()) {
            order[doc] = names.ordValue();
            if (live == null || live.get(doc)) {
                docAt[order[doc]] = doc;
            }
            slots[doc] = keySlots.slot(keys[order[doc]]);
        }
        byte[] merits = merits(reader);
        return new Segment(
                reader, columns.join(), order, docAt, beginnings, keys, slots, merits, new LazyWords(reader));
    }

    /// Read side by side: what stands in a column for the first time has to be understood.
    private static Column[] columns(LeafReader reader, Dictionaries dictionaries) {
        return Arrays.stream(Basis.values())
                .parallel()
                .map(basis -> {
                    try {
                        return column(reader, basis, dictionaries.of(basis));
                    } catch (IOException failed) {
                        throw new UncheckedIOException(failed);
                    }
                })
                .toArray(Column[]::new);
    }

    /// The same columns for the same segment after documents were deleted from it.
    Segment with(LeafReader later) {
        return new Segment(later, columns, order, docAt, beginnings, keys, slots, merits, words);
    }

    Column column(Basis basis) {
        return columns[basis.ordinal()];
    }

    /// The documents that still count; empty for all of them.
    Optional<Bits> live() {
        return Optional.ofNullable(reader.getLiveDocs());
    }

    boolean isLive(int doc) {
        Bits live = reader.getLiveDocs();
        return live == null || live.get(doc);
    }

    int size() {
        return order.length;
    }

    /// The key of the document at a place in the order of names.
    PlantKey keyAt(int place) {
        return new PlantKey(KeySlots.unpack(keys[place]));
    }

    /// Parts most names without their being unpacked; unsigned.
    private static long beginning(BytesRef name) {
        long letters = 0;
        for (int at = 0; at < Long.BYTES; at++) {
            letters = letters << Byte.SIZE | (at < name.length ? name.bytes[name.offset + at] & 0xFF : 0);
        }
        return letters;
    }

    private static long packedKey(BytesRef order) {
        int start = order.offset + order.length;
        while (order.bytes[start - 1] != PlantDocument.BEFORE_KEY) {
            start--;
        }
        return KeySlots.pack(order.bytes, start, order.offset + order.length);
    }

    /// Name as sorted and key of the documents at places in the order of names; names that stand near each other are
    /// unpacked together.
    ///
    /// @param places ascending
    List<String> namesAt(int[] places) throws IOException {
        SortedDocValues names = DocValues.getSorted(reader, PlantDocument.ORDER);
        List<String> found = new ArrayList<>(places.length);
        for (int place : places) {
            found.add(names.lookupOrd(place).utf8ToString());
        }
        return found;
    }

    private static byte[] merits(LeafReader reader) throws IOException {
        NumericDocValues values = DocValues.getNumeric(reader, PlantDocument.MERIT);
        byte[] merits = new byte[reader.maxDoc()];
        for (int doc = values.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = values.nextDoc()) {
            merits[doc] = (byte) values.longValue();
        }
        return merits;
    }

    private static Column column(LeafReader reader, Basis basis, Dictionary dictionary) throws IOException {
        SortedDocValues values = DocValues.getSorted(reader, basis.field());
        int[] codeOf = new int[values.getValueCount()];
        for (int value = 0; value < codeOf.length; value++) {
            codeOf[value] = dictionary.code(values.lookupOrd(value).utf8ToString());
        }
        int[] codes = new int[reader.maxDoc()];
        for (int doc = values.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = values.nextDoc()) {
            codes[doc] = codeOf[values.ordValue()];
        }
        return Column.of(codes);
    }
}
