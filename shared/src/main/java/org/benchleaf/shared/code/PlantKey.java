package org.benchleaf.shared.code;

import java.util.Locale;
import org.benchleaf.shared.Reading;

/// A plant's name for ever: seven characters that survive every renaming and are never given twice.
///
/// The alphabet has no vowel and no letter that looks like a digit, so that no spreadsheet takes a key for a number
/// (`219E01`), a date (`MAR2026`) or a truth value, and no key spells a word. The first character is a letter. The
/// last is a check character modulo the prime 29 over distinct weights: every single wrong character and every swap
/// of neighbours is noticed.
///
/// @param text seven characters, upper case
/// @throws IllegalArgumentException when it is not a key; read what people type with [#read]
public record PlantKey(String text) implements Comparable<PlantKey> {
    private static final String ALPHABET = "0123456789BCDFGHJKMNPQRSTVWXY";
    private static final int BASE = ALPHABET.length();
    /// What each character stands for, -1 for one that no key holds.
    private static final byte[] VALUES = values();
    private static final int DIGITS = 10;
    private static final int LENGTH = 7;
    /// How many keys there are: 19 letters, then five of 29 characters.
    private static final long COUNT = (BASE - DIGITS) * (long) Math.pow(BASE, LENGTH - 2);
    /// Coprime to 19 and 29, so that serials map to keys one to one; large, so that neighbours look unlike.
    private static final long STRIDE = 146_482_067L;
    private static final long START = 59_604_127L;

    public PlantKey {
        if (!isKey(text)) {
            throw new IllegalArgumentException("not a plant key: " + text);
        }
    }

    /// The key of the n-th plant ever registered.
    ///
    /// @param serial 0 or more, below 389,710,831
    public static PlantKey ofSerial(long serial) {
        if (serial < 0 || serial >= COUNT) {
            throw new IllegalArgumentException("plant serial must be 0 to " + (COUNT - 1) + "; got " + serial);
        }
        long number = Math.floorMod(START + Math.multiplyExact(serial, STRIDE), COUNT);
        char[] key = new char[LENGTH];
        for (int place = LENGTH - 2; place > 0; place--) {
            key[place] = ALPHABET.charAt((int) (number % BASE));
            number /= BASE;
        }
        key[0] = ALPHABET.charAt(DIGITS + (int) number);
        key[LENGTH - 1] = check(new String(key, 0, LENGTH - 1));
        return new PlantKey(new String(key));
    }

    /// Reads a key as people type it: any case, `O` for zero, `I` or `L` for one.
    public static Reading<PlantKey> read(String text) {
        String key = text.strip()
                .toUpperCase(Locale.ROOT)
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
        return isKey(key) ? Reading.of(new PlantKey(key)) : Reading.refused("key.unknown", text);
    }

    /// Asked for every row that is read from a catalog.
    private static boolean isKey(String text) {
        if (text.length() != LENGTH || value(text.charAt(0)) < DIGITS) {
            return false;
        }
        int sum = 0;
        for (int place = 0; place < LENGTH - 1; place++) {
            int value = value(text.charAt(place));
            if (value < 0) {
                return false;
            }
            sum += (place + 1) * value;
        }
        return ALPHABET.charAt(sum % BASE) == text.charAt(LENGTH - 1);
    }

    private static int value(char character) {
        return character < VALUES.length ? VALUES[character] : -1;
    }

    private static byte[] values() {
        byte[] values = new byte['Z' + 1];
        for (char character = 0; character < values.length; character++) {
            values[character] = (byte) ALPHABET.indexOf(character);
        }
        return values;
    }

    private static char check(String body) {
        int sum = 0;
        for (int place = 0; place < body.length(); place++) {
            sum += (place + 1) * value(body.charAt(place));
        }
        return ALPHABET.charAt(sum % BASE);
    }

    @Override
    public int compareTo(PlantKey other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
