package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.benchleaf.app.web.route.Upload;

/// Spreadsheets that were sent in and wait until their columns are told, the newest few.
final class PendingFiles {
    private static final int MOST = 8;

    private final Path incoming;
    private final Map<String, Pending> waiting = new LinkedHashMap<>();

    PendingFiles(Path incoming) {
        this.incoming = incoming;
    }

    private record Pending(String who, Path folder, Path file) {}

    /// @param who sent it; nobody else sees it
    synchronized String keep(String who, Upload upload) {
        if (waiting.size() >= MOST) {
            drop(waiting.keySet().iterator().next());
        }
        try (InputStream content = upload.content()) {
            Files.createDirectories(incoming);
            // each in a folder of its own: findings name the file as its sender does
            String name = ImportPages.safeName(upload.name());
            Path own = Files.createTempDirectory(incoming, "kept-");
            Path file = own.resolve(name);
            Files.copy(content, file);
            String id = UUID.randomUUID().toString();
            waiting.put(id, new Pending(who, own, file));
            return id;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    synchronized Optional<Path> find(String id, String who) {
        return Optional.ofNullable(waiting.get(id))
                .filter(pending -> pending.who().equals(who))
                .map(Pending::file)
                .filter(Files::isRegularFile);
    }

    private void drop(String id) {
        Pending oldest = waiting.remove(id);
        if (oldest != null) {
            try {
                Files.deleteIfExists(oldest.file());
                Files.deleteIfExists(oldest.folder());
            } catch (IOException kept) {
                throw new UncheckedIOException(kept);
            }
        }
    }
}
