package org.benchleaf.search.sound;

/// How unlike two sounds are, and how much it matters when one is missing. Vowels in unstressed Latin syllables
/// are heard least surely, consonants that differ by voice alone are often taken for one another. Weights are
/// ours, chosen on one half of the misheard names and tried on the other.
final class SoundCosts {
    /// Another consonant altogether.
    static final int OTHER = 8;

    private static final int LETTERS = 128;
    private static final String VOWELS = "aeiou";
    private static final String ALIKE =
            "zs1 Ck2 Sk5 CS2 Cj3 Ss3 Sj3 St4 Sz3 Tt2 Tf4 Td4 Ts4 fv2 bp3 bv4 dt3 gk3 gj3 jy4 mn3 lr5"
                    + " zj4 nr7 kt6 pt6 ks5 dj5 sf6 lw5 wv4 fp5 db6 nd6 gd6 zd5 kp6 gb6 Cs4 Ct4 Tz5";
    private static final int[] CHANGE = changes();
    private static final int[] MISSING = missing();

    private SoundCosts() {}

    static int change(char one, char other) {
        return CHANGE[one * LETTERS + other];
    }

    static int missing(char sound) {
        return MISSING[sound];
    }

    private static int[] changes() {
        int[] costs = new int[LETTERS * LETTERS];
        for (char one = 0; one < LETTERS; one++) {
            for (char other = 0; other < LETTERS; other++) {
                boolean vowel = isVowel(one);
                boolean otherVowel = isVowel(other);
                int cost = vowel && otherVowel ? 2 : vowel != otherVowel ? OTHER + 1 : OTHER;
                boolean glide = one == 'y' && other == 'i'
                        || one == 'i' && other == 'y'
                        || one == 'w' && other == 'u'
                        || one == 'u' && other == 'w';
                costs[one * LETTERS + other] = one == other ? 0 : glide ? 1 : cost;
            }
        }
        for (String pair : ALIKE.split(" ")) {
            char one = pair.charAt(0);
            char other = pair.charAt(1);
            int cost = pair.charAt(2) - '0';
            costs[one * LETTERS + other] = cost;
            costs[other * LETTERS + one] = cost;
        }
        return costs;
    }

    private static int[] missing() {
        int[] costs = new int[LETTERS];
        for (char sound = 0; sound < LETTERS; sound++) {
            costs[sound] = switch (sound) {
                case 'h', 'y' -> 2;
                case 'a', 'e', 'i', 'o', 'u' -> 3;
                case 'w', 'r' -> 4;
                case 's', 'z', 't', 'd', 'n' -> 5;
                case 'l', 'm' -> 6;
                default -> 7;
            };
        }
        return costs;
    }

    private static boolean isVowel(char sound) {
        return VOWELS.indexOf(sound) >= 0;
    }
}
