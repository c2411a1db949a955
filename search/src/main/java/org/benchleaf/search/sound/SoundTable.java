package org.benchleaf.search.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// The rules and weights of sounds as plain tables, for a look-up that runs elsewhere, such as on a
/// telephone in a field: there only their working is written down a second time.
///
/// @param rules for each first letter those with the longest spelling first
/// @param sounds every sound, a letter each; the tables below are in its order
/// @param change how unlike two sounds are
/// @param missing how much it matters when one is missing
public record SoundTable(List<Rule> rules, String sounds, List<List<Integer>> change, List<Integer> missing) {
    private static final String SOUNDS = "abcdefghijklmnopqrstuvwxyzCST0123456789";

    public SoundTable {
        rules = List.copyOf(rules);
        change = change.stream().map(List::copyOf).toList();
        missing = List.copyOf(missing);
    }

    /// How one spelling sounds.
    ///
    /// @param place `START`, `START_VOWEL`, `END`, `FRONT`, `BACK` or `ANY`
    public record Rule(String spelling, String place, String sounds) {}

    /// As they stand.
    public static SoundTable ofNames() {
        List<Rule> rules = new ArrayList<>();
        for (char letter = 'a'; letter <= 'z'; letter++) {
            for (SoundRule rule : SoundRules.of(letter)) {
                rules.add(new Rule(rule.spelling(), rule.place().name(), rule.sounds()));
            }
        }
        return new SoundTable(
                rules,
                SOUNDS,
                eachSound()
                        .mapToObj(one -> eachSound()
                                .mapToObj(other -> SoundCosts.change((char) one, (char) other))
                                .toList())
                        .toList(),
                eachSound().mapToObj(sound -> SoundCosts.missing((char) sound)).toList());
    }

    private static IntStream eachSound() {
        return SOUNDS.chars();
    }
}
