package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/// The column maps that come with the program.
public final class ColumnMaps {
    private static final List<String> IDS =
            List.of("own-plants", "own-stock", "usda-characteristics", "landscape-taxa");

    private ColumnMaps() {}

    /// The catalog's own format for plants, described in `docs/spreadsheet.md`.
    public static ColumnMap ownPlants() {
        return load("own-plants");
    }

    /// The catalog's own format for stock.
    public static ColumnMap ownStock() {
        return load("own-stock");
    }

    /// Characteristics of USDA PLANTS, one row a taxon.
    public static ColumnMap usdaCharacteristics() {
        return load("usda-characteristics");
    }

    /// Landscape taxa with zones, sizes in feet, light, bloom and deer rating, one row a taxon.
    public static ColumnMap landscapeTaxa() {
        return load("landscape-taxa");
    }

    /// The names of the maps that come with the program.
    public static List<String> ids() {
        return IDS;
    }

    /// The map of this name.
    public static Optional<ColumnMap> byId(String id) {
        return IDS.contains(id) ? Optional.of(load(id)) : Optional.empty();
    }

    /// Every field that a column of such a file may hold.
    public static List<String> fields(RowKind rows) {
        return Fields.all(rows);
    }

    /// Units that bare numbers may have.
    public static List<String> units() {
        return CellTexts.UNITS.stream().sorted().toList();
    }

    private static ColumnMap load(String id) {
        try (InputStream json = ColumnMaps.class.getResourceAsStream("maps/" + id + ".json")) {
            if (json == null) {
                throw new IllegalStateException("column map is missing from the program: " + id);
            }
            return MapFile.read(new String(json.readAllBytes(), StandardCharsets.UTF_8))
                    .orThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
