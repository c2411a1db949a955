package org.benchleaf.search.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class WordTrieTest {
    private static final String LETTERS = "abcdxö";

    private static String word(SplittableRandom random, int longest) {
        StringBuilder word = new StringBuilder();
        for (int length = 1 + random.nextInt(longest); length > 0; length--) {
            word.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return word.toString();
    }

    @Test
    void findsExactlyTheWordsThatManyLettersOff() {
        SplittableRandom random = new SplittableRandom(7);
        TreeSet<String> distinct = new TreeSet<>();
        while (distinct.size() < 1_500) {
            distinct.add(word(random, 9));
        }
        List<String> words = new ArrayList<>(distinct);
        WordTrie trie = WordTrie.of(words);
        WordTrees fromBothEnds = WordTrees.of(words);
        for (int asked = 0; asked < 400; asked++) {
            String text = word(random, 11);
            for (int most = 0; most <= 2; most++) {
                Map<String, Integer> found = new TreeMap<>();
                trie.spelt(text, most, (word, cost) -> found.put(words.get(word), cost));
                Map<String, Integer> again = new TreeMap<>();
                fromBothEnds.spelt(
                        text,
                        most,
                        (word, cost) ->
                                assertThat(again.put(words.get(word), cost)).isNull());
                assertThat(again).as("%s within %d, from both ends", text, most).isEqualTo(found);
                Map<String, Integer> near = new TreeMap<>();
                for (String word : words) {
                    int cost = edits(text, word);
                    if (cost <= most) {
                        near.put(word, cost);
                    }
                }
                assertThat(found).as("%s within %d", text, most).isEqualTo(near);
            }
        }
    }

    @Test
    void findsTheWordsATextBeginsAndEndsWith() {
        List<String> words = List.of("bus", "bush", "lime", "limelight", "light", "smoke", "smokeb");
        WordTrie trie = WordTrie.of(words);
        List<String> found = new ArrayList<>();
        trie.halves("smokebush", 3, (word, letters) -> found.add(words.get(word) + " " + letters));
        trie.halves("limelight", 3, (word, letters) -> found.add(words.get(word) + " " + letters));
        assertThat(found).containsExactlyInAnyOrder("smoke 5", "smokeb 6", "bush 4", "lime 4", "light 5");
    }

    @Test
    void findsExactlyTheSoundsThatFarOff() {
        SplittableRandom random = new SplittableRandom(8);
        TreeSet<String> distinct = new TreeSet<>();
        while (distinct.size() < 1_500) {
            distinct.add(word(random, 9).replace('x', 'k').replace('ö', 'o'));
        }
        List<String> sounds = new ArrayList<>(distinct);
        WordTrees trees = WordTrees.of(sounds);
        for (int asked = 0; asked < 300; asked++) {
            String said = word(random, 11).replace('x', 's').replace('ö', 'u');
            int most = random.nextInt(20);
            Map<String, Integer> found = new TreeMap<>();
            trees.sounding(
                    said,
                    most,
                    (sound, cost) ->
                            assertThat(found.put(sounds.get(sound), cost)).isNull());
            Map<String, Integer> near = new TreeMap<>();
            for (String sound : sounds) {
                int cost = SoundDistance.between(said, sound, 1_000);
                if (cost <= most) {
                    near.put(sound, cost);
                }
            }
            assertThat(found).as("%s within %d", said, most).isEqualTo(near);
        }
    }

    /// Inserted, left out, changed, swapped with a neighbour: the table that textbooks show, cell by cell.
    private static int edits(String one, String other) {
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                if (i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[one.length()][other.length()];
    }
}
