package org.benchleaf.search.sound;

import java.util.List;
import org.jspecify.annotations.Nullable;

/// What a name sounds like, as a text of one letter a sound; alike names have like texts.
public final class Sounds {
    private Sounds() {}

    /// The sounds of one folded word: `coreopsis` and `koriopsis` give the same.
    public static String of(String word) {
        StringBuilder sounds = new StringBuilder();
        add(sounds, word);
        return sounds.toString();
    }

    /// The sounds of words said in one breath, where the bounds between words are not heard: `kory opsis`. An e that
    /// ends an English word before another one is silent: `lime light`.
    public static String of(List<String> words) {
        StringBuilder sounds = new StringBuilder();
        for (int place = 0; place < words.size(); place++) {
            String word = words.get(place);
            boolean last = place == words.size() - 1;
            add(sounds, last || !endsSilently(word) ? word : word.substring(0, word.length() - 1) + softened(word));
        }
        return sounds.toString();
    }

    private static boolean endsSilently(String word) {
        int length = word.length();
        return length > 2
                && word.charAt(length - 1) == 'e'
                && !isVowel(word.charAt(length - 2))
                && hasVowel(word, length - 1);
    }

    /// What keeps `lace` and `sage` soft when their e is left out.
    private static String softened(String word) {
        char before = word.charAt(word.length() - 2);
        return before == 'c' || before == 'g' ? "e" : "";
    }

    private static boolean hasVowel(String word, int before) {
        for (int place = 0; place < before; place++) {
            if (isVowel(word.charAt(place))) {
                return true;
            }
        }
        return false;
    }

    private static void add(StringBuilder sounds, String word) {
        int at = 0;
        while (at < word.length()) {
            SoundRule rule = rule(word, at);
            if (rule == null) {
                char letter = word.charAt(at);
                if (letter >= '0' && letter <= '9') {
                    append(sounds, letter);
                } else if (letter == 'h'
                        && at > 0
                        && at + 1 < word.length()
                        && isVowel(word.charAt(at - 1))
                        && isVowel(word.charAt(at + 1))) {
                    append(sounds, 'h');
                }
                at++;
            } else {
                for (int place = 0; place < rule.sounds().length(); place++) {
                    append(sounds, rule.sounds().charAt(place));
                }
                at += rule.spelling().length();
            }
        }
    }

    private static @Nullable SoundRule rule(String word, int at) {
        for (SoundRule rule : SoundRules.of(word.charAt(at))) {
            if (rule.holds(word, at)) {
                return rule;
            }
        }
        return null;
    }

    /// A sound said twice is heard once: double letters, -ii.
    private static void append(StringBuilder sounds, char sound) {
        if (sounds.isEmpty() || sounds.charAt(sounds.length() - 1) != sound) {
            sounds.append(sound);
        }
    }

    private static boolean isVowel(char letter) {
        return "aeiouy".indexOf(letter) >= 0;
    }
}
