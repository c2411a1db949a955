package org.benchleaf.shared.color;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.shared.Term;

/// The color words that people ask with, each with the words growers use for it.
///
/// The families follow the hue names of NBS Circular 553 (ISCC-NBS), joined and parted as the flower
/// trade does; which trade word belongs to which family is common practice, no source.
public enum ColorFamily implements Term {
    WHITE("white", "#F4F2EA", "ivory", "cream"),
    YELLOW("yellow", "#F2CC45", "gold", "golden", "lemon", "butter"),
    ORANGE("orange", "#E08038", "copper", "apricot", "peach", "salmon", "coral", "amber"),
    RED("red", "#B8272F", "scarlet", "crimson", "burgundy", "maroon", "wine", "ruby"),
    PINK("pink", "#E59AB0", "rose", "magenta", "fuchsia"),
    PURPLE("purple", "#7C5399", "violet", "lavender", "lilac", "plum", "mauve"),
    BLUE("blue", "#5470B8", "indigo", "azure"),
    GREEN("green", "#4F7B3E", "yellow-green", "chartreuse", "lime", "olive"),
    BLUE_GREEN("blue-green", "#6E918C", "glaucous", "teal"),
    BROWN("brown", "#7A5230", "bronze", "cinnamon", "tan", "russet"),
    GRAY("gray", "#9A9C96", "silver", "grey"),
    BLACK("black", "#26222A", "ebony");

    private final String term;
    private final Srgb typical;
    private final List<String> others;

    ColorFamily(String term, String typical, String... others) {
        this.term = term;
        this.typical = Srgb.read(typical).orThrow();
        this.others = List.of(others);
    }

    @Override
    public String term() {
        return term;
    }

    /// A swatch in the middle of the family.
    public Srgb typical() {
        return typical;
    }

    /// The family of a color word, read by its last word: `deep red` is red, `rose-pink` is pink.
    public static Optional<ColorFamily> ofWord(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        Optional<ColorFamily> whole = exactly(wanted);
        return whole.isPresent() ? whole : exactly(lastWord(wanted));
    }

    private static String lastWord(String words) {
        int start = words.length();
        while (start > 0 && words.charAt(start - 1) != '-' && !Character.isWhitespace(words.charAt(start - 1))) {
            start--;
        }
        return words.substring(start);
    }

    private static Optional<ColorFamily> exactly(String word) {
        return Arrays.stream(values())
                .filter(family -> family.term.equals(word) || family.others.contains(word))
                .findFirst();
    }
}
