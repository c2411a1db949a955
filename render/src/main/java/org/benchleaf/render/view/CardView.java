package org.benchleaf.render.view;

import java.util.List;

/// A bench card, measured and set; places and sides in mm from the upper left corner, type in points.
///
/// @param title of the document
/// @param page its measures and the type of its furniture
/// @param name botanical name
/// @param common common name
/// @param why the line why now
/// @param nameTop and the others: where they stand
/// @param picture the year ring or a photograph; one or none
/// @param icons may be empty
/// @param iconSize type of their words
/// @param cautions one block a caution or notice
/// @param foot where price, size and code stand
/// @param price empty when none is shown
/// @param size in which it is sold here, empty when the card is for the plant at large
/// @param code side of the code with its quiet zone
/// @param shop the shop's line, not set yet
/// @param key the plant's key, for those who cannot scan
/// @param logo of the shop; one or none
record CardView(
        String title,
        Page page,
        TextBlock name,
        TextBlock common,
        TextBlock why,
        double nameTop,
        double commonTop,
        double ruleTop,
        double whyTop,
        List<CardPicture> picture,
        List<CardIcon> icons,
        double iconSize,
        List<CardCaution> cautions,
        Foot foot,
        String price,
        TextBlock size,
        String each,
        double code,
        String call,
        List<Word> shop,
        String key,
        List<CardLogo> logo) {
    CardView {
        icons = List.copyOf(icons);
        shop = List.copyOf(shop);
        cautions = List.copyOf(cautions);
        picture = List.copyOf(picture);
        logo = List.copyOf(logo);
    }

    /// Measures of the card.
    ///
    /// @param inner width between the margins
    /// @param icon side of an icon
    /// @param iconIndent from its left to its words
    /// @param iconLeading of its words in points
    /// @param sign side of a caution's sign
    /// @param shopTop where the shop's line stands
    /// @param shopType its type
    record Page(
            double width,
            double height,
            double margin,
            double inner,
            double icon,
            double iconIndent,
            double iconLeading,
            double sign,
            double shopTop,
            double shopType) {}

    /// Price, size and code.
    ///
    /// @param width of the foot
    /// @param offerTop of size and price
    /// @param callTop of the line above the code
    /// @param codeTop of the code
    /// @param right distance of the code from the right edge of the card, its quiet zone reaching into the margin
    /// @param priceType in points
    record Foot(
            double left,
            double top,
            double width,
            double offerTop,
            double callTop,
            double codeTop,
            double callRight,
            double codeRight,
            double priceType,
            double eachType,
            double callType) {}

    /// The year ring or a photograph with its credit.
    ///
    /// @param figure key of its drawing
    /// @param credit may be empty
    record CardPicture(
            String figure, double top, double left, double width, String credit, double creditTop, double creditType) {}

    /// The shop's logo.
    record CardLogo(double left, double top, double width) {}

    /// One caution or notice and its place.
    ///
    /// @param left of its sign
    record CardCaution(double left, double textLeft, double top, TextBlock text) {}
}
