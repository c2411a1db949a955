package org.benchleaf.search.index;

/// The plants of one block that miss nothing, and those that miss so little that something counts them.
final class NearlyAll {
    private final int[] clean;
    private final int[] docs;
    private final int[] missed;
    private int cleanCount;
    private int count;

    NearlyAll(int block) {
        clean = new int[block];
        docs = new int[block];
        missed = new int[block];
    }

    void clear() {
        cleanCount = 0;
        count = 0;
    }

    /// A document that misses nothing.
    void add(int doc) {
        clean[cleanCount++] = doc;
    }

    /// A document that misses something.
    ///
    /// @param wishes a bit for each wish missed
    void add(int doc, int wishes) {
        docs[count] = doc;
        missed[count++] = wishes;
    }

    /// Documents that miss nothing: the first [#cleanCount] count.
    int[] clean() {
        return clean;
    }

    int cleanCount() {
        return cleanCount;
    }

    /// How many others there are.
    int count() {
        return count;
    }

    int doc(int at) {
        return docs[at];
    }

    /// The wishes that the document at this place misses, as bits.
    int missed(int at) {
        return missed[at];
    }
}
