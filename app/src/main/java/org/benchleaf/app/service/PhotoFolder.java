package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.render.Photographs;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.plant.Photograph;

/// The workspace's folder of photographs. Bare file names only, no links: nothing outside the folder
/// is ever opened.
public final class PhotoFolder implements Photographs {
    /// Largest file that is read, in bytes.
    private static final long LARGEST = 60_000_000;

    private final Path folder;

    public PhotoFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    public Optional<byte[]> find(String file) {
        if (stamp(file).isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readAllBytes(folder.resolve(file)));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /// Writes a photograph; one of the same name is replaced. It is whole or not there.
    ///
    /// @throws Refusal when it cannot be written
    public void keep(String file, byte[] jpeg) {
        if (!Photograph.isFileName(file)) {
            throw new IllegalArgumentException("no file name: " + file);
        }
        try {
            Files.createDirectories(folder);
            Path unfinished = Files.createTempFile(folder, ".photograph", ".part");
            Files.write(unfinished, jpeg);
            Files.move(
                    unfinished,
                    folder.resolve(file),
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException full) {
            throw new Refusal(Problem.of("workspace.read-only", folder.toString()));
        }
    }

    @Override
    public Optional<Stamp> stamp(String file) {
        if (!Photograph.isFileName(file)) {
            return Optional.empty();
        }
        try {
            BasicFileAttributes attributes =
                    Files.readAttributes(folder.resolve(file), BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return attributes.isRegularFile() && attributes.size() <= LARGEST
                    ? Optional.of(new Stamp(
                            attributes.size(), attributes.lastModifiedTime().toMillis()))
                    : Optional.empty();
        } catch (IOException missing) {
            return Optional.empty();
        }
    }

    @Override
    public String where() {
        return folder.toString();
    }
}
