package org.benchleaf.search.need;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/// The English words as they come with the program; the file belongs to the content, which this module does
/// not see.
public final class EnglishWords {
    private static final Path FILE = Path.of(
            "..", "content", "src", "main", "resources", "org", "benchleaf", "content", "words", "need_en.words");

    private EnglishWords() {}

    public static Vocabulary read() {
        try (InputStream words = Files.newInputStream(FILE)) {
            return Vocabulary.read(words);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
