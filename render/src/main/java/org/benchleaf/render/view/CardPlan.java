package org.benchleaf.render.view;

import java.util.List;
import org.benchleaf.render.CardFormat;

/// Measures of a bench card in mm and points.
///
/// @param style its style sheet
/// @param width of the card
/// @param height of the card
/// @param margin all round
/// @param name sizes of the botanical name; never under 24 pt
/// @param common sizes of the common name
/// @param why sizes of the line why now
/// @param caution sizes of a caution
/// @param iconType sizes of the words beside the icons
/// @param mostRing largest ring
/// @param price size of the price, 36 pt or more, for the height of the foot
/// @param foot height of the foot: price, size and code
/// @param code box of the code with its quiet zone
/// @param briefCautions whether cautions say only what and whom
record CardPlan(
        String style,
        double width,
        double height,
        double margin,
        TypeRange name,
        TypeRange common,
        TypeRange why,
        TypeRange caution,
        TypeRange iconType,
        double mostRing,
        double price,
        double foot,
        double code,
        boolean briefCautions) {
    static CardPlan of(CardFormat format) {
        return switch (format) {
            case LARGE ->
                new CardPlan(
                        "card-large",
                        format.widthMm(),
                        format.heightMm(),
                        10,
                        new TypeRange(34, 27, 24, 3, 1.06),
                        new TypeRange(16, 12, 11, 2, 1.2),
                        new TypeRange(16.5, 14, 12, 3, 1.22),
                        new TypeRange(11, 11, 9, 3, 1.2),
                        new TypeRange(12.5, 11.5, 9.5, 3, 1.18),
                        66,
                        42,
                        32,
                        27,
                        false);
            case SMALL ->
                new CardPlan(
                        "card-small",
                        format.widthMm(),
                        format.heightMm(),
                        7.5,
                        new TypeRange(29, 24, 24, 3, 1.06),
                        new TypeRange(13, 10.5, 10, 2, 1.2),
                        new TypeRange(13, 11.5, 10.5, 3, 1.22),
                        new TypeRange(9, 9, 7.5, 3, 1.2),
                        new TypeRange(10, 9.5, 8, 3, 1.18),
                        48,
                        36,
                        27,
                        23,
                        false);
        };
    }

    /// The plans of a size, roomiest first: when words are many they are set smaller, and last of all a caution
    /// says how only on the live page.
    static List<CardPlan> all(CardFormat format) {
        CardPlan roomy = of(format);
        return List.of(roomy, roomy.tight(false), roomy.tight(true));
    }

    private CardPlan tight(boolean brief) {
        return new CardPlan(
                style,
                width,
                height,
                margin,
                new TypeRange(name.least() + 2, name.least(), name.least(), name.lines(), 1.04),
                new TypeRange(
                        common.leastWhileFewer(), common.least(), common.least(), common.lines(), common.leading()),
                new TypeRange(why.leastWhileFewer(), why.least(), why.least(), why.lines(), why.leading()),
                new TypeRange(
                        caution.least() + 0.5, caution.least(), caution.least(), caution.lines(), caution.leading()),
                iconType,
                mostRing,
                price,
                foot,
                code,
                brief);
    }

    /// The ring and the icons need at least this height in mm.
    double leastMiddle() {
        return mostRing * (briefCautions ? 0.4 : 0.6);
    }

    double innerWidth() {
        return width - 2 * margin;
    }
}
