package org.benchleaf.render.pdf;

import java.util.List;
import org.benchleaf.shared.color.Srgb;

/// A page of which every part is measured and has its place: nothing is left to be laid out. Places and sides in mm
/// from the upper left corner, type and lines in points.
///
/// @param name what it is about, for messages
/// @param parts in the order in which they are read
public record PlacedPage(String name, double widthMm, double heightMm, List<Part> parts) {
    public PlacedPage {
        parts = List.copyOf(parts);
    }

    /// One part of a page.
    public sealed interface Part {
        /// Words that are read in one go.
        ///
        /// @param heading whether they are the heading of the page
        /// @param lines from the first to the last
        record Words(boolean heading, List<Line> lines) implements Part {
            public Words {
                lines = List.copyOf(lines);
            }
        }

        /// A drawing.
        ///
        /// @param alternative all that it says, in words; empty for ornament
        record Figure(Drawing drawing, double left, double top, double width, String alternative) implements Part {}

        /// A level line, an ornament.
        ///
        /// @param top its upper edge
        /// @param thick in points
        record Rule(double left, double top, double width, double thick, Srgb ink) implements Part {}
    }

    /// Words side by side.
    ///
    /// @param left where the first begins
    /// @param baseline they stand on
    public record Line(double left, double baseline, List<Piece> pieces) {
        public Line {
            pieces = List.copyOf(pieces);
        }
    }

    /// Words of one face, size and ink.
    ///
    /// @param text with the space before it, if any
    public record Piece(Face face, String text, double size, Srgb ink) {}
}
