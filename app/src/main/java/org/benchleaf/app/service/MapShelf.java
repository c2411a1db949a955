package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.MapFile;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// The column maps that a shop can name: those it saved in its workspace, then those that come with the program.
public final class MapShelf {
    private static final String ENDING = ".json";

    private final Path folder;

    /// @param folder of the workspace's maps; need not be there yet
    public MapShelf(Path folder) {
        this.folder = folder;
    }

    /// The map with this name, or in the file of this path.
    ///
    /// @throws Refusal when there is none, or it cannot be read as one
    public ColumnMap named(String name) {
        Optional<Path> saved = saved(name);
        if (saved.isPresent()) {
            return read(saved.get());
        }
        return ColumnMaps.byId(name).orElseGet(() -> {
            Path file = Path.of(name);
            if (!Files.isRegularFile(file)) {
                throw new Refusal(Problem.of("map.unknown", name).with("accepted", String.join(", ", names())));
            }
            return read(file);
        });
    }

    private Optional<Path> saved(String name) {
        return isName(name)
                ? Optional.of(folder.resolve(name + ENDING)).filter(Files::isRegularFile)
                : Optional.empty();
    }

    private static boolean isName(String name) {
        return name.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,60}");
    }

    private static ColumnMap read(Path file) {
        try {
            return switch (MapFile.read(Files.readString(file))) {
                case Reading.Read<ColumnMap>(ColumnMap columns) -> columns;
                case Reading.Refused<ColumnMap>(Problem problem) ->
                    throw new Refusal(Problem.of("map.file", file.toString()).with("why", reason(problem)));
            };
        } catch (IOException unreadable) {
            throw new Refusal(Problem.of("file.unreadable", file.toString()));
        }
    }

    private static String reason(Problem problem) {
        String line = problem.details().containsKey("line")
                ? " (line " + problem.details().get("line") + ")"
                : "";
        return problem.details().getOrDefault("read", "") + line;
    }

    /// Writes a map under a name.
    ///
    /// @return the file, to be looked through
    /// @throws Refusal when the name holds other characters than letters, digits, `-` and `_`, or it is
    ///     taken
    public Path save(ColumnMap map, String name, boolean over) {
        if (!isName(name)) {
            throw new Refusal(Problem.of("map.name", name));
        }
        Path file = folder.resolve(name + ENDING);
        if (Files.exists(file) && !over) {
            throw new Refusal(Problem.of("map.exists", file.toString()));
        }
        try {
            Files.createDirectories(folder);
            return Files.writeString(file, MapFile.write(map));
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("workspace.read-only", folder.toString()));
        }
    }

    /// Every name, those of the shop first.
    public List<String> names() {
        List<String> own = List.of();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                own = files.map(file -> String.valueOf(file.getFileName()))
                        .filter(file -> file.endsWith(ENDING))
                        .map(file -> file.substring(0, file.length() - ENDING.length()))
                        .sorted()
                        .toList();
            } catch (IOException unreadable) {
                throw new Refusal(Problem.of("file.unreadable", folder.toString()));
            }
        }
        return Stream.concat(own.stream(), ColumnMaps.ids().stream()).distinct().toList();
    }
}
