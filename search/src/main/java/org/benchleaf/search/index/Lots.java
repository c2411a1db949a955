package org.benchleaf.search.index;

import java.util.Arrays;

/// Lots in parallel arrays; the lots of one item of a plant stand together.
@SuppressWarnings("ArrayRecordComponent") // never compared
record Lots(byte[] item, char[] size, int[] ready, int[] count, long[] price, byte[] currency) {
    static Lots ofSize(int length) {
        return new Lots(
                new byte[length],
                new char[length],
                new int[length],
                new int[length],
                new long[length],
                new byte[length]);
    }

    /// These lots, or a longer copy when they do not reach that far.
    Lots room(int length) {
        if (length <= item.length) {
            return this;
        }
        int longer = Math.max(length, item.length * 2);
        return new Lots(
                Arrays.copyOf(item, longer),
                Arrays.copyOf(size, longer),
                Arrays.copyOf(ready, longer),
                Arrays.copyOf(count, longer),
                Arrays.copyOf(price, longer),
                Arrays.copyOf(currency, longer));
    }

    void put(int at, int ofItem, int ofSize, int readyWeek, int howMany, long minor, int ofCurrency) {
        item[at] = (byte) ofItem;
        size[at] = (char) ofSize;
        ready[at] = readyWeek;
        count[at] = howMany;
        price[at] = minor;
        currency[at] = (byte) ofCurrency;
    }

    void copyTo(Lots other, int from, int to, int length) {
        System.arraycopy(item, from, other.item, to, length);
        System.arraycopy(size, from, other.size, to, length);
        System.arraycopy(ready, from, other.ready, to, length);
        System.arraycopy(count, from, other.count, to, length);
        System.arraycopy(price, from, other.price, to, length);
        System.arraycopy(currency, from, other.currency, to, length);
    }
}
