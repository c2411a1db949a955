package org.benchleaf.content;

/// How much of its stock a shop tells.
///
/// @param counts how exactly it says how many there are
/// @param prices whether it says what they cost
public record Telling(Counts counts, boolean prices) {
    /// Everything.
    public static final Telling ALL = new Telling(Counts.EXACT, true);

    /// Fewer than this are "few". Common practice, no source: a landscaper's smallest order of one kind.
    public static final int FEW = 10;

    /// How exactly.
    public enum Counts {
        /// 60 now.
        EXACT,
        /// Plenty now.
        COARSE,
        /// Here now.
        HIDDEN
    }

    public boolean isExact() {
        return counts == Counts.EXACT;
    }

    /// The end of the key of the words for so many.
    String key(int count) {
        return switch (counts) {
            case EXACT -> "";
            case COARSE -> count < FEW ? ".few" : ".plenty";
            case HIDDEN -> ".some";
        };
    }
}
