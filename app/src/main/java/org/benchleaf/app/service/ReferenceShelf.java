package org.benchleaf.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/// The plants that are known and not grown, read when first asked for, and anew when the shop's own file has changed.
/// Safe for many threads.
public final class ReferenceShelf implements Supplier<ReferencePlants> {
    private final Path own;
    private Optional<Read> last = Optional.empty();

    /// @param own the shop's own file; it need not be there
    public ReferenceShelf(Path own) {
        this.own = own;
    }

    /// @param state when the file was changed and how long it was, empty while there is none
    private record Read(String state, ReferencePlants plants) {}

    @Override
    public synchronized ReferencePlants get() {
        String now = state();
        Read read = last.filter(before -> before.state().equals(now))
                .orElseGet(() -> new Read(now, ReferencePlants.read(own)));
        last = Optional.of(read);
        return read.plants();
    }

    private String state() {
        try {
            return Files.isRegularFile(own) ? Files.getLastModifiedTime(own) + " " + Files.size(own) : "";
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
