package org.benchleaf.search.sound;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/// Words as two trees of letters, read from the front and from the back: what is nearly right is right at one end or
/// the other, so neither tree is walked far. Unchanging; safe for many threads.
public final class WordTrees {
    /// So many last letters that are right leave few words to look at.
    private static final int ENDING = 4;

    private final WordTrie forward;
    private final WordTrie backward;
    private final int[] wordOf;

    private WordTrees(WordTrie forward, WordTrie backward, int[] wordOf) {
        this.forward = forward;
        this.backward = backward;
        this.wordOf = wordOf;
    }

    /// A tree of distinct words, so sorted that words with the same beginning stand together; a word is known by
    /// its place in the list.
    public static WordTrees of(List<String> sorted) {
        String[] turned = sorted.stream().map(WordTrees::turned).toArray(String[]::new);
        int[] order = IntStream.range(0, turned.length)
                .boxed()
                .sorted(Comparator.comparing(word -> turned[word]))
                .mapToInt(Integer::intValue)
                .toArray();
        List<String> backward =
                IntStream.of(order).mapToObj(word -> turned[word]).toList();
        return new WordTrees(WordTrie.of(sorted), WordTrie.of(backward), order);
    }

    /// Letter by letter; no word of a name is written with more than one code unit a letter.
    private static String turned(String word) {
        char[] letters = new char[word.length()];
        for (int at = 0; at < letters.length; at++) {
            letters[at] = word.charAt(letters.length - 1 - at);
        }
        return new String(letters);
    }

    /// The words at most so many letters off: inserted, left out, changed, or swapped with a neighbour.
    ///
    /// @param most 0 to 2
    public void spelt(String word, int most, WordTrie.Found found) {
        if (most == 0) {
            forward.spelt(word, 0, found);
            return;
        }
        // Either not all letters amiss are among the first ones, or the last ones are right.
        int last = Math.min(ENDING, word.length() / 2);
        Set<Integer> told = new HashSet<>();
        forward.spelt(word, most, word.length() - last, most - 1, (near, cost) -> {
            told.add(near);
            found.at(near, cost);
        });
        backward.speltFrom(turned(word), last, most, (place, cost) -> {
            if (told.add(wordOf[place])) {
                found.at(wordOf[place], cost);
            }
        });
    }

    /// The words whose sounds are at most so far off; the words of these trees and the one asked are sounds.
    public void sounding(String sounds, int most, WordTrie.Found found) {
        // Either the first sounds are less than half as far off, or the last ones are.
        int middle = sounds.length() / 2;
        int half = most / 2;
        Map<Integer, Integer> near = new HashMap<>();
        forward.sounding(sounds, limits(sounds.length(), middle, half, most), near::put);
        int last = sounds.length() - middle;
        backward.sounding(
                turned(sounds),
                limits(sounds.length(), last, most - half - 1, most),
                (place, cost) -> near.merge(wordOf[place], cost, Math::min));
        near.forEach(found::at);
    }

    private static int[] limits(int length, int first, int early, int most) {
        int[] limits = new int[length + 1];
        for (int at = 0; at <= length; at++) {
            limits[at] = at < first ? early : most;
        }
        return limits;
    }

    /// The words that a text begins with and ends with, told with their length as the cost.
    ///
    /// @param least letters of each
    public void halves(String text, int least, WordTrie.Found found) {
        forward.halves(text, least, found);
    }
}
