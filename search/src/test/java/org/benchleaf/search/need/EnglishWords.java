package org.benchleaf.search.need;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/// The words as they come with the program, English ones above all; the file belongs to the content, which this
/// module does not see.
public final class EnglishWords {
    private static final Path FOLDER =
            Path.of("..", "content", "src", "main", "resources", "org", "benchleaf", "content", "words");

    private EnglishWords() {}

    public static Vocabulary read() {
        return read("en");
    }

    static Vocabulary read(String language) {
        try (InputStream words = Files.newInputStream(FOLDER.resolve("need_" + language + ".words"))) {
            return Vocabulary.read(words);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
