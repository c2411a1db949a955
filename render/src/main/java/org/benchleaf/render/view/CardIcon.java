package org.benchleaf.render.view;

import java.util.List;

/// One of the plain icons of a bench card with its words.
///
/// @param figure key of its drawing
/// @param left edge in mm
/// @param top of the icon in mm from the top of the card
/// @param textTop of the first line in mm from the top of the card
/// @param lines of words
public record CardIcon(String figure, double left, double top, double textTop, List<TextLine> lines) {
    public CardIcon {
        lines = List.copyOf(lines);
    }
}
