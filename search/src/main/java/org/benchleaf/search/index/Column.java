package org.benchleaf.search.index;

/// One number of a dictionary for each document of a segment, as narrow as the numbers allow.
sealed interface Column {
    int code(int doc);

    /// Adds up what the code of each document stands for, for a run of documents.
    ///
    /// @param from first document
    /// @param count how many
    /// @param scores score by code, added to `sums` from index 0
    void addRun(int from, int count, long[] scores, long[] sums);

    /// The same for chosen documents.
    ///
    /// @param docs documents, of which the first `count` are meant; `sums` has one for each
    void add(int[] docs, int count, long[] scores, long[] sums);

    /// Adds the same to each document of a run that holds a code.
    void addRunWhere(int from, int count, int code, long score, long[] sums);

    /// The same for chosen documents.
    void addWhere(int[] docs, int count, int code, long score, long[] sums);

    /// Counts how many of some documents hold each code.
    ///
    /// @param docs documents, of which the first `used` count
    /// @param histogram by code
    void count(int[] docs, int used, int[] histogram);

    static Column of(int[] codes) {
        int most = 0;
        for (int code : codes) {
            most = Math.max(most, code);
        }
        if (most <= 0xFF) {
            byte[] narrow = new byte[codes.length];
            for (int doc = 0; doc < codes.length; doc++) {
                narrow[doc] = (byte) codes[doc];
            }
            return new Bytes(narrow);
        }
        if (most <= Character.MAX_VALUE) {
            char[] narrow = new char[codes.length];
            for (int doc = 0; doc < codes.length; doc++) {
                narrow[doc] = (char) codes[doc];
            }
            return new Chars(narrow);
        }
        return new Ints(codes);
    }

    /// Up to 256 distinct values.
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Bytes(byte[] codes) implements Column {
        @Override
        public int code(int doc) {
            return codes[doc] & 0xFF;
        }

        @Override
        public void count(int[] docs, int used, int[] histogram) {
            for (int i = 0; i < used; i++) {
                histogram[codes[docs[i]] & 0xFF]++;
            }
        }

        @Override
        public void addRun(int from, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[from + i] & 0xFF];
            }
        }

        @Override
        public void add(int[] docs, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[docs[i]] & 0xFF];
            }
        }

        @Override
        public void addRunWhere(int from, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += (codes[from + i] & 0xFF) == code ? score : 0;
            }
        }

        @Override
        public void addWhere(int[] docs, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += (codes[docs[i]] & 0xFF) == code ? score : 0;
            }
        }
    }

    /// Up to 65,536 distinct values.
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Chars(char[] codes) implements Column {
        @Override
        public int code(int doc) {
            return codes[doc];
        }

        @Override
        public void count(int[] docs, int used, int[] histogram) {
            for (int i = 0; i < used; i++) {
                histogram[codes[docs[i]]]++;
            }
        }

        @Override
        public void addRun(int from, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[from + i]];
            }
        }

        @Override
        public void add(int[] docs, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[docs[i]]];
            }
        }

        @Override
        public void addRunWhere(int from, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += codes[from + i] == code ? score : 0;
            }
        }

        @Override
        public void addWhere(int[] docs, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += codes[docs[i]] == code ? score : 0;
            }
        }
    }

    /// Any number of distinct values.
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Ints(int[] codes) implements Column {
        @Override
        public int code(int doc) {
            return codes[doc];
        }

        @Override
        public void count(int[] docs, int used, int[] histogram) {
            for (int i = 0; i < used; i++) {
                histogram[codes[docs[i]]]++;
            }
        }

        @Override
        public void addRun(int from, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[from + i]];
            }
        }

        @Override
        public void add(int[] docs, int count, long[] scores, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += scores[codes[docs[i]]];
            }
        }

        @Override
        public void addRunWhere(int from, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += codes[from + i] == code ? score : 0;
            }
        }

        @Override
        public void addWhere(int[] docs, int count, int code, long score, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += codes[docs[i]] == code ? score : 0;
            }
        }
    }
}
