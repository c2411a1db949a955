package org.benchleaf.render.pdf;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;

/// The fonts of the content pack for pictures of dots.
public final class DotFonts {
    private final Map<Face, Font> fonts = new EnumMap<>(Face.class);

    /// @throws org.benchleaf.content.MissingContent when a font is missing
    /// @throws PrintRefused when a file is no font
    public DotFonts(ContentPack content) {
        for (Face face : Face.values()) {
            try {
                fonts.put(
                        face, Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(content.bytes(face.key()))));
            } catch (FontFormatException | IOException broken) {
                throw new PrintRefused(Problem.of("print.font", face.key()));
            }
        }
    }

    Font font(Face face, double pixels) {
        return Objects.requireNonNull(fonts.get(face)).deriveFont((float) pixels);
    }
}
