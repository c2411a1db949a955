package org.benchleaf.search.sound;

/// How one spelling sounds at one place in a word.
///
/// @param spelling letters a to z
/// @param place where in the word it holds
/// @param sounds what is heard, a letter a sound; empty when silent
record SoundRule(String spelling, Place place, String sounds) {
    private static final String FRONT = "eiy";
    private static final String VOWELS = "aeiouy";

    /// Where a rule holds.
    enum Place {
        /// At the beginning of a word.
        START,
        /// At the beginning of a word, before a vowel.
        START_VOWEL,
        /// At the end of a word.
        END,
        /// Before e, i or y, where Latin c and g are soft.
        FRONT,
        /// Before a vowel other than e, i and y.
        BACK,
        ANY
    }

    boolean holds(String word, int at) {
        if (!word.startsWith(spelling, at)) {
            return false;
        }
        int after = at + spelling.length();
        char next = after < word.length() ? word.charAt(after) : '.';
        return switch (place) {
            case START -> at == 0 && after < word.length();
            case START_VOWEL -> at == 0 && VOWELS.indexOf(next) >= 0;
            case END -> after == word.length();
            case FRONT -> FRONT.indexOf(next) >= 0;
            case BACK -> next == 'a' || next == 'o' || next == 'u';
            case ANY -> true;
        };
    }
}
