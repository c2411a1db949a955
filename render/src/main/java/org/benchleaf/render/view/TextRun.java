package org.benchleaf.render.view;

import org.benchleaf.render.pdf.Face;

/// Words in one face of type.
///
/// @param text with the space before it, if any
/// @param face family name of the face in style sheets
public record TextRun(String text, String face) {
    static TextRun of(String text, Face face) {
        return new TextRun(text, face.family());
    }
}
