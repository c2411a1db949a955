package org.benchleaf.render.pdf;

import java.io.IOException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.PrimitiveIterator;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.BaseFont;

/// The fonts of the content pack, parsed once. One thread at a time draws with them; others may measure meanwhile,
/// which
/// changes nothing.
public final class FontShelf {
    /// Most characters of names and facts; the library looks each up in a map, and lines are broken by trying.
    private static final int USUAL = 0x250;

    private final Map<Face, BaseFont> fonts = new EnumMap<>(Face.class);
    private final Map<Face, int[]> widths = new EnumMap<>(Face.class);

    /// @throws org.benchleaf.content.MissingContent when a font is missing
    /// @throws PrintRefused when a file is no font
    public FontShelf(ContentPack content) {
        for (Face face : Face.values()) {
            fonts.put(face, parse(face, content.bytes(face.key())));
            int[] unasked = new int[USUAL];
            Arrays.fill(unasked, -1);
            widths.put(face, unasked);
        }
    }

    private static BaseFont parse(Face face, byte[] bytes) {
        try {
            BaseFont font =
                    BaseFont.createFont(face.key(), BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, bytes, new byte[0]);
            font.setIncludeCidSet(false);
            font.setSecureRandom(new PrefixOf(face));
            return font;
        } catch (IOException | RuntimeException broken) {
            throw new PrintRefused(Problem.of("print.font", face.key()));
        }
    }

    BaseFont font(Face face) {
        return java.util.Objects.requireNonNull(fonts.get(face));
    }

    /// Width of a text in points.
    ///
    /// @param size of type in points
    public double width(Face face, String text, double size) {
        return thousandths(face, text) * 0.001f * 1000f * size / 1000;
    }

    /// Width in thousandths of the size. Threads that ask for a character at once store the same number.
    private int thousandths(Face face, String text) {
        int[] known = java.util.Objects.requireNonNull(widths.get(face));
        int sum = 0;
        for (int at = 0; at < text.length(); at++) {
            char character = text.charAt(at);
            if (character >= USUAL) {
                return font(face).getWidth(text);
            }
            int width = known[character];
            if (width < 0) {
                width = font(face).getWidth(character);
                known[character] = width;
            }
            sum += width;
        }
        return sum;
    }

    /// How far the baseline lies under the middle of a line, where the middle between the face's highest and lowest
    /// ink stands, in ems.
    public double baselineUnderMiddle(Face face) {
        BaseFont font = font(face);
        return (font.getFontDescriptor(BaseFont.BBOXURY, 1) + font.getFontDescriptor(BaseFont.BBOXLLY, 1)) / 2;
    }

    /// Whether the face has a glyph for every character; spaces are always there.
    public boolean canPrint(Face face, String text) {
        return firstMissing(face, text) < 0;
    }

    /// The first character the face lacks, or -1.
    public int firstMissing(Face face, String text) {
        for (PrimitiveIterator.OfInt points = text.codePoints().iterator(); points.hasNext(); ) {
            int point = points.nextInt();
            if (point != ' ' && !font(face).charExists(point)) {
                return point;
            }
        }
        return -1;
    }

    /// Gives each embedded subset the same tag every time; the library draws six letters at random, which would make
    /// two prints of the same page differ.
    private static final class PrefixOf extends SecureRandom {
        private static final long serialVersionUID = 1;
        private final int face;

        PrefixOf(Face face) {
            this.face = face.ordinal();
        }

        @Override
        public double nextDouble() {
            return (face + 0.5) / 26;
        }
    }
}
