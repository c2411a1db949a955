package org.benchleaf.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.benchleaf.catalog.CatalogLocation;
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

    /// Where the catalog lies: on a server when the settings say so, else in a file. User and password of a
    /// server come from the environment.
    public CatalogLocation catalog(Settings settings) {
        return settings.database()
                .<CatalogLocation>map(url -> new CatalogLocation.OnServer(
                        url, environment(Settings.DATABASE_USER), environment(Settings.DATABASE_PASSWORD)))
                .orElseGet(() -> new CatalogLocation.InFile(database()));
    }

    private static Optional<String> environment(String name) {
        return Optional.ofNullable(System.getenv(name)).filter(value -> !value.isEmpty());
    }

    /// The shop's table of zones by postal code, when it has one.
    public Path postalZonesFile() {
        return folder.resolve("postal-zones.csv");
    }

    /// Plants that customers ask for and the shop does not grow, when it has a list of them.
    public Path referenceFile() {
        return folder.resolve("reference.csv");
    }

    /// The shop's own word on what to plant instead of what, when it has a table of it.
    public Path insteadFile() {
        return folder.resolve("instead.csv");
    }

    /// An index belongs to one catalog: a workspace that goes over to a server gets another one.
    public Path indexFolder(Settings settings) {
        return folder.resolve(settings.database()
                .map(url -> "index-" + Integer.toHexString(url.hashCode()))
                .orElse("index"));
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
