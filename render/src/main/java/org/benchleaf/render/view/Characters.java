package org.benchleaf.render.view;

import java.text.Normalizer;
import java.util.regex.Pattern;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.shared.Problem;

/// Checks every character of the catalog's texts before it is printed: a missing glyph would leave a hole.
final class Characters {
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private final FontShelf shelf;
    private final String subject;

    /// @param subject the plant or label, for messages
    Characters(FontShelf shelf, String subject) {
        this.shelf = shelf;
        this.subject = subject;
    }

    /// The text as it will be printed: composed, without soft hyphens (the engine would print them), single spaces.
    ///
    /// @param field what it is, for the message
    /// @param faces it will be set in
    /// @throws PrintRefused naming the character when a face cannot print it
    String checked(String text, String field, Face... faces) {
        String clean = SPACES.matcher(
                        Normalizer.normalize(text, Normalizer.Form.NFC).replace("\u00AD", ""))
                .replaceAll(" ")
                .strip();
        for (Face face : faces) {
            int missing = shelf.firstMissing(face, clean);
            if (missing >= 0) {
                throw new PrintRefused(Problem.of("print.glyph", text)
                        .with("name", subject)
                        .with("field", field)
                        .with("character", Character.toString(missing))
                        .with("code", "U+%04X".formatted(missing))
                        .with("font", face.family()));
            }
        }
        return clean;
    }
}
