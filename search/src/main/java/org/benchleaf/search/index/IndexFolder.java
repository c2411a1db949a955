package org.benchleaf.search.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/// The folder of the index: each building has a numbered subfolder of its own, `plants-7`, so that a new one grows
/// beside the old.
record IndexFolder(Path path) {
    private static final String PREFIX = "plants-";

    /// Buildings found, the newest first.
    List<Path> buildings() throws IOException {
        Files.createDirectories(path);
        try (Stream<Path> children = Files.list(path)) {
            return children.filter(child -> number(child) > 0)
                    .sorted(Comparator.comparingInt(IndexFolder::number).reversed())
                    .toList();
        }
    }

    /// A subfolder that is not there yet.
    Path next() throws IOException {
        int newest = buildings().stream().findFirst().map(IndexFolder::number).orElse(0);
        return path.resolve(PREFIX + (newest + 1));
    }

    /// Deletes every other building; what cannot be deleted, such as a file still open, is left for the next time.
    void keepOnly(Path building) throws IOException {
        for (Path other : buildings()) {
            if (!other.equals(building)) {
                delete(other);
            }
        }
    }

    private static void delete(Path building) {
        try (Stream<Path> inside = Files.walk(building)) {
            inside.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.deleteIfExists(file);
                } catch (IOException stillOpen) {
                    // tried again when the index is opened next
                }
            });
        } catch (IOException | UncheckedIOException gone) {
            // as above
        }
    }

    private static int number(Path building) {
        String name = building.getFileName().toString();
        return name.matches(PREFIX + "\\d{1,9}") ? Integer.parseInt(name.substring(PREFIX.length())) : 0;
    }
}
