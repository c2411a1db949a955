package org.benchleaf.render.view;

import java.util.List;

/// Lines of one size.
///
/// @param size of type in points
/// @param leading from line to line in points
/// @param lines may be empty
public record TextBlock(double size, double leading, List<TextLine> lines) {
    static final double POINT_MM = 25.4 / 72;

    public TextBlock {
        lines = List.copyOf(lines);
    }

    static TextBlock none() {
        return new TextBlock(0, 0, List.of());
    }

    /// Height in mm.
    public double height() {
        return Math.round(lines.size() * leading * POINT_MM * 1000) / 1000.0;
    }

    public boolean isEmpty() {
        return lines.isEmpty();
    }
}
