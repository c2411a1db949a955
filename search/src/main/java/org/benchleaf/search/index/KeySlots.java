package org.benchleaf.search.index;

import java.util.Arrays;

/// Numbers plant keys from 0 on as they are met: a hash table without objects, for catalogs of a million plants.
/// Used by one thread at a time.
final class KeySlots {
    private static final long EMPTY = 0;

    private long[] keys = new long[1024];
    private int[] slots = new int[1024];
    private int size;

    /// The slot of a key of up to eight ASCII characters, given now when it is new.
    int slot(String key) {
        return slot(pack(key));
    }

    /// The slot of a packed key.
    int slot(long packed) {
        if (size * 2 >= keys.length) {
            grow();
        }
        int place = place(packed);
        if (keys[place] == EMPTY) {
            keys[place] = packed;
            slots[place] = size++;
        }
        return slots[place];
    }

    int size() {
        return size;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldSlots = slots;
        keys = new long[oldKeys.length * 2];
        slots = new int[keys.length];
        Arrays.fill(keys, EMPTY);
        for (int old = 0; old < oldKeys.length; old++) {
            if (oldKeys[old] != EMPTY) {
                int place = place(oldKeys[old]);
                keys[place] = oldKeys[old];
                slots[place] = oldSlots[old];
            }
        }
    }

    private int place(long packed) {
        int mask = keys.length - 1;
        long mixed = packed * 0x9E3779B97F4A7C15L;
        int place = (int) (mixed >>> 32) & mask;
        while (keys[place] != EMPTY && keys[place] != packed) {
            place = place + 1 & mask;
        }
        return place;
    }

    /// A key of up to eight ASCII characters as one number, never 0.
    static long pack(byte[] text, int from, int to) {
        long packed = 0;
        for (int i = from; i < to; i++) {
            packed = packed << 8 | text[i];
        }
        return packed;
    }

    /// The key that was packed.
    static String unpack(long packed) {
        int length = (Long.SIZE - Long.numberOfLeadingZeros(packed) + 7) / 8;
        char[] text = new char[length];
        for (int i = length - 1; i >= 0; i--) {
            text[i] = (char) (packed & 0xFF);
            packed >>>= 8;
        }
        return new String(text);
    }

    private static long pack(String key) {
        long packed = 0;
        for (int i = 0; i < key.length(); i++) {
            packed = packed << 8 | key.charAt(i);
        }
        return packed;
    }
}
