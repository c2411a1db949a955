package org.benchleaf.render.view;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.StateIcons;
import org.benchleaf.render.figure.StateIcons.State;
import org.benchleaf.shared.stock.Condition;

/// How plants look, as small marks for lists; a line below the list says what each means.
final class ConditionMarks {
    private final Wording words;
    private final Figures figures;

    /// @param figures receives the marks
    ConditionMarks(Wording words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    /// Keys of the marks of what was seen, each once.
    List<String> of(Collection<Condition> seen) {
        return seen.stream()
                .map(ConditionMarks::state)
                .distinct()
                .sorted()
                .map(this::key)
                .toList();
    }

    /// One mark with its words.
    public record Meaning(String figure, String text) {}

    /// Every mark.
    List<Meaning> legend() {
        return Stream.of(State.values())
                .map(state -> new Meaning(key(state), word(state)))
                .toList();
    }

    private String key(State state) {
        String key = "mark:" + state.word();
        if (!figures.has(key)) {
            figures.put(key, StateIcons.draw(state, word(state)));
        }
        return key;
    }

    private String word(State state) {
        return words.text("mark." + state.word());
    }

    private static State state(Condition seen) {
        return switch (seen) {
            case FLOWER_BUDS_SET, BUD_SET_GOOD, IN_BUD -> State.BUD;
            case IN_BLOOM, STILL_SOME_FLOWER, PLUMING_UP -> State.BLOOM;
            case FALL_COLOR_STARTING, FULL_FALL_COLOR -> State.COLOR;
            case WINTER_HUE, WINTER_STEMS_SHOWING -> State.WINTER;
            case BERRIES_ON -> State.FRUIT;
            case FLUSHING, GOOD_SIDE_GROWTH -> State.GROWTH;
            case TRIMMED, CUT_BACK, TIED_UP -> State.CUT;
            case FULL, HEAVY, GOOD_CANES, CONSISTENT_CROP, STAGED -> State.FULL;
            case FOLIAGE_FINISHED, NEXT_CROP_IN_SPRING -> State.REST;
        };
    }
}
