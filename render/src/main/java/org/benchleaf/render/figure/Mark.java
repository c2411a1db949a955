package org.benchleaf.render.figure;

import java.util.List;

/// One thing drawn, in the order of drawing.
public sealed interface Mark {
    /// A filled outline.
    record Area(Path path, Ink ink) implements Mark {}

    /// A stroked line with round ends.
    ///
    /// @param width in points
    record Line(Path path, Ink ink, double width) implements Mark {}

    /// Words on one line.
    ///
    /// @param y the baseline
    /// @param size in points
    /// @param strong semibold instead of regular
    record Words(double x, double y, String text, double size, boolean strong, Ink ink, Anchor anchor)
            implements Mark {}

    /// Marks cut off outside a rectangle.
    record Within(double x, double y, double width, double height, List<Mark> marks) implements Mark {
        public Within {
            marks = List.copyOf(marks);
        }
    }

    /// Which end of words stands at their place.
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
