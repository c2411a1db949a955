package org.benchleaf.catalog.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/// Text that was UTF-8, was read as Windows-1252 by some program and saved again: `Ã©` for `é`, `Ã—` for `×`.
final class Mojibake {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private Mojibake() {}

    /// The text as it was meant; empty when it is not damaged in this way.
    ///
    /// Damaged text, turned back into Windows-1252 bytes, is valid UTF-8; text that is right, as `Späth`, is not.
    static Optional<String> repaired(String text) {
        if (text.chars().noneMatch(c -> c == 'Ã' || c == 'Â' || c == 'Ä' || c == 'Å' || c == 'â')) {
            return Optional.empty();
        }
        try {
            ByteBuffer bytes = WINDOWS.newEncoder().encode(CharBuffer.wrap(text));
            String meant = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
            return Optional.of(meant).filter(other -> !other.equals(text));
        } catch (CharacterCodingException notDamaged) {
            return Optional.empty();
        }
    }

    /// Whether characters were lost when some program could not write them: `Sp�th`.
    static boolean isLossy(String text) {
        return text.indexOf('\uFFFD') >= 0;
    }
}
