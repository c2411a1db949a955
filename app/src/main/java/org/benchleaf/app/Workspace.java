package org.benchleaf.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.shared.Problem;

/// A shop's folder: its catalog, index, settings and what it changed of the content.
///
/// @param folder absolute
public record Workspace(Path folder) {
    public Workspace {
        folder = folder.toAbsolutePath().normalize();
    }

    /// An existing workspace.
    ///
    /// @throws Refusal when there is none
    public static Workspace at(Path folder) {
        Workspace workspace = new Workspace(folder);
        if (!Files.isRegularFile(workspace.settingsFile())) {
            throw new Refusal(Problem.of("workspace.missing", folder.toString()));
        }
        return workspace;
    }

    /// Makes a new workspace; nothing of an existing one is overwritten.
    ///
    /// @throws Refusal when there is one already, or the folder cannot be written
    public static Workspace create(Path folder, Settings settings) {
        Workspace workspace = new Workspace(folder);
        if (Files.exists(workspace.settingsFile())) {
            throw new Refusal(Problem.of("workspace.exists", folder.toString()));
        }
        try {
            Files.createDirectories(workspace.folder);
            Files.createDirectories(workspace.contentFolder());
            Files.createDirectories(workspace.photographsFolder());
            Files.writeString(workspace.settingsFile(), settings.text());
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("workspace.read-only", folder.toString()));
        }
        return workspace;
    }

    public Path settingsFile() {
        return folder.resolve(Settings.FILE);
    }

    public Path database() {
        return folder.resolve("benchleaf.db");
    }

    /// The shop's table of zones by postal code, when it has one.
    public Path postalZonesFile() {
        return folder.resolve("postal-zones.csv");
    }

    public Path indexFolder() {
        return folder.resolve("index");
    }

    /// Column maps that the shop saved under a name.
    public Path mapsFolder() {
        return folder.resolve("maps");
    }

    /// Photographs of plants, by the file names that their rows give.
    public Path photographsFolder() {
        return folder.resolve("photographs");
    }

    /// Files of the shop's own, laid over the built-in content.
    public Path contentFolder() {
        return folder.resolve("content");
    }
}
