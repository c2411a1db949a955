package org.benchleaf.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/// What a file of the shop says, read when first asked for, and anew when the file has changed. A file that was changed
/// to what cannot be read changes nothing until it is mended. Safe for many threads.
///
/// @param <T> what is read
public final class FileShelf<T> implements Supplier<T> {
    private static final Logger LOG = LoggerFactory.getLogger(FileShelf.class);

    private final Path file;
    private final Function<Path, T> read;
    private Optional<Read<T>> last = Optional.empty();

    /// @param file it need not be there
    public FileShelf(Path file, Function<Path, T> read) {
        this.file = file;
        this.read = read;
    }

    /// @param state when the file was changed and how long it was, empty while there is none
    private record Read<T>(String state, T content) {}

    @Override
    public synchronized T get() {
        String now = state();
        if (last.isEmpty() || !last.get().state().equals(now)) {
            last = Optional.of(new Read<>(now, content()));
        }
        return last.get().content();
    }

    private T content() {
        if (last.isEmpty()) {
            return read.apply(file);
        }
        try {
            return read.apply(file);
        } catch (RuntimeException unreadable) {
            LOG.warn("{} was changed and cannot be read; what it said before still counts", file, unreadable);
            return last.get().content();
        }
    }

    private String state() {
        try {
            return Files.isRegularFile(file) ? Files.getLastModifiedTime(file) + " " + Files.size(file) : "";
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
