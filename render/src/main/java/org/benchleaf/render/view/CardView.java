package org.benchleaf.render.view;

import java.util.List;

/// A bench card, measured and set.
///
/// @param title of the document
/// @param style name of the style sheet of its size
/// @param name botanical name
/// @param common common name
/// @param why the line why now
/// @param nameTop and the others: places in mm from the top of the card
/// @param ringLeft of the year ring in mm; the ring is left out when its size is 0
/// @param icons may be empty
/// @param iconSize type of their words in points
/// @param cautions one block a caution
/// @param price empty when none is shown
/// @param size in which it is sold here, empty when the card is for the plant at large
/// @param code side of the code with its quiet zone in mm
/// @param shop the shop's line
/// @param key the plant's key, for those who cannot scan
/// @param photo one or none; with one there is no ring, and the seasons are told in words
public record CardView(
        String title,
        String style,
        TextBlock name,
        TextBlock common,
        TextBlock why,
        double nameTop,
        double commonTop,
        double ruleTop,
        double whyTop,
        double ringTop,
        double ringLeft,
        double ringSize,
        double iconsLeft,
        List<CardIcon> icons,
        double iconSize,
        List<CardCaution> cautions,
        double footTop,
        String price,
        TextBlock size,
        String each,
        double code,
        String call,
        String shop,
        String address,
        String key,
        List<CardPhoto> photo) {
    public CardView {
        icons = List.copyOf(icons);
        cautions = List.copyOf(cautions);
        photo = List.copyOf(photo);
    }

    /// The photograph and its credit; places and width in mm.
    ///
    /// @param credit may be empty
    public record CardPhoto(double top, double left, double width, String credit, double creditTop) {}

    /// One caution and its place.
    ///
    /// @param top in mm from the top of the card
    public record CardCaution(double top, TextBlock text) {}
}
