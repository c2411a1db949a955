package org.benchleaf.render.view;

import java.util.List;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.shared.name.BotanicalName;

/// Texts of one plant, checked and set on lines.
final class Texts {
    private final Typesetter typesetter;
    private final Characters characters;
    private final String subject;

    /// @param subject the plant, for messages
    Texts(FontShelf shelf, String subject) {
        this.typesetter = new Typesetter(shelf);
        this.characters = new Characters(shelf, subject);
        this.subject = subject;
    }

    /// A botanical name in the largest type that fits.
    TextBlock name(BotanicalName name, double widthMm, TypeRange range) {
        characters.checked(name.toString(), "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
        return typesetter.set(Typesetter.words(name, true), widthMm / TextBlock.POINT_MM, range, subject, "name");
    }

    /// Running text; an empty one is no line.
    TextBlock flow(String text, String field, Face face, double widthMm, double size, double leading) {
        String clean = characters.checked(text, field, face);
        return clean.isEmpty()
                ? TextBlock.none()
                : typesetter.flow(
                        Typesetter.words(clean, face),
                        widthMm / TextBlock.POINT_MM,
                        size,
                        size * leading,
                        subject,
                        field);
    }

    String checked(String text, String field, Face... faces) {
        return characters.checked(text, field, faces);
    }

    /// Height of blocks one under the other, in mm.
    static double height(List<TextBlock> blocks) {
        return blocks.stream().mapToDouble(TextBlock::height).sum();
    }
}
