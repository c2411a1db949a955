package org.benchleaf.render.figure;

import java.util.List;

/// A drawing with its words for those who cannot see it.
///
/// @param width natural width in points
/// @param height natural height in points
/// @param marks in the order of drawing
/// @param title what it is, in a few words
/// @param alternative all that it says, in words
public record Figure(double width, double height, List<Mark> marks, String title, String alternative) {
    public Figure {
        marks = List.copyOf(marks);
    }
}
