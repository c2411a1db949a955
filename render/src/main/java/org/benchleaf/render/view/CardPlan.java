package org.benchleaf.render.view;

import java.util.List;
import org.benchleaf.render.CardFormat;

/// Measures of a bench card in mm and points. Small cards and large ones have measures of their own, which grow with
/// the card; nothing that must be read at arm's length falls under its least size.
///
/// @param wide whether the card lies: the picture then stands at the left of all that is below the names
/// @param picture whether a ring or photograph is shown; where words need its room, what people must know goes first
/// @param scale of all measures that are not said
/// @param margin all round
/// @param name sizes of the botanical name; never under 24 pt
/// @param common sizes of the common name
/// @param why sizes of the line why now
/// @param caution sizes of a caution or notice
/// @param iconType sizes of the words beside the icons
/// @param mostRing largest ring
/// @param price size of the price, 36 pt or more, for the height of the foot
/// @param foot height of the foot: price, size and code
/// @param code box of the code with its quiet zone
/// @param briefCautions whether cautions say only what and whom
record CardPlan(
        boolean wide,
        boolean picture,
        double width,
        double height,
        double scale,
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
    /// Sides of 5½ × 7 in and of 4 × 6 in.
    private static final double LARGE_SHORT = 139.7;

    private static final double LARGE_LONG = 177.8;
    private static final double SMALL_SHORT = 101.6;
    private static final double SMALL_LONG = 152.4;

    static CardPlan of(CardFormat format) {
        double shorter = Math.min(format.widthMm(), format.heightMm());
        double longer = Math.max(format.widthMm(), format.heightMm());
        return shorter < 120
                ? small(format, Math.min(shorter / SMALL_SHORT, longer / SMALL_LONG))
                : large(format, Math.min(shorter / LARGE_SHORT, longer / LARGE_LONG));
    }

    private static CardPlan large(CardFormat format, double s) {
        return new CardPlan(
                format.isWide(),
                true,
                format.widthMm(),
                format.heightMm(),
                s,
                10 * s,
                new TypeRange(34 * s, 27 * s, 24 * s, 3, 1.06),
                new TypeRange(16 * s, 12 * s, 11 * s, 2, 1.2),
                new TypeRange(16.5 * s, 14 * s, 12 * s, 3, 1.22),
                new TypeRange(11 * s, 11 * s, 9 * s, 3, 1.2),
                new TypeRange(12.5 * s, 11.5 * s, 11.5 * s, 3, 1.18),
                66 * s,
                42 * s,
                (format.isWide() ? 28 : 32) * s,
                (format.isWide() ? 23 : 27) * s,
                false);
    }

    private static CardPlan small(CardFormat format, double s) {
        return new CardPlan(
                format.isWide(),
                true,
                format.widthMm(),
                format.heightMm(),
                s,
                7.5 * s,
                new TypeRange(29, 24, 24, 4, 1.06),
                new TypeRange(13, 10.5, 10, 2, 1.2),
                new TypeRange(13, 11.5, 10.5, 3, 1.22),
                new TypeRange(9, 9, 7.5, 3, 1.2),
                new TypeRange(10, 9.5, 9.5, 3, 1.18),
                48 * s,
                36,
                format.isWide() ? 23 : 27,
                format.isWide() ? 19 : 23,
                false);
    }

    /// The plans of a size, roomiest first: when words are many they are set smaller, then a caution says how only on
    /// the live page, and last of all the picture makes room.
    static List<CardPlan> all(CardFormat format) {
        CardPlan roomy = of(format);
        return List.of(
                roomy,
                roomy.tight(false, true),
                roomy.tight(true, true),
                roomy.tight(false, false),
                roomy.tight(true, false));
    }

    private CardPlan tight(boolean brief, boolean shown) {
        return new CardPlan(
                wide,
                shown,
                width,
                height,
                scale,
                margin,
                new TypeRange(name.least() + 2, name.least(), name.least(), name.lines(), 1.04),
                new TypeRange(
                        common.leastWhileFewer(), common.least(), common.least(), common.lines(), common.leading()),
                new TypeRange(why.leastWhileFewer(), why.least(), why.least(), why.lines(), why.leading()),
                new TypeRange(
                        caution.least() + 0.5,
                        caution.least(),
                        caution.least(),
                        caution.lines() + 1,
                        caution.leading()),
                new TypeRange(
                        iconType.largest(), iconType.least(), furniture(9.5, 8), iconType.lines(), iconType.leading()),
                mostRing,
                price,
                foot,
                code,
                brief);
    }

    /// Whether it is one of the small cards, which have finer furniture.
    boolean isSmall() {
        return Math.min(width, height) < 120;
    }

    /// A measure of the furniture in mm or points.
    double furniture(double ofLarge, double ofSmall) {
        return isSmall() ? ofSmall : ofLarge * scale;
    }

    /// Side of an icon in mm.
    double icon() {
        return furniture(8.4, 7.4);
    }

    /// From the left of an icon to its words, in mm.
    double iconIndent() {
        return furniture(11, 9.6);
    }

    /// From the left of a caution's sign to its words, in mm.
    double cautionIndent() {
        return furniture(6.6, 5.7);
    }

    /// The shop's line at the foot of the card, in mm.
    double shopLine() {
        return furniture(5.5, 5);
    }

    /// Height of the shop's logo at the head of the card, in mm.
    double logo() {
        return furniture(9, 7);
    }

    /// A price is never set smaller: 36 pt on large cards, on small ones as large as stands beside the code.
    double leastPrice() {
        return isSmall() ? 24 : 36;
    }

    /// The picture and the icons need at least this height in mm.
    double leastMiddle(boolean shown) {
        if (!shown) {
            return furniture(18, 9);
        }
        return wide ? furniture(30, 26) : mostRing * (briefCautions ? 0.4 : 0.6);
    }

    double innerWidth() {
        return width - 2 * margin;
    }
}
