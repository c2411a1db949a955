package org.benchleaf.catalog.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;
import org.jspecify.annotations.Nullable;

/// One row before and after an import, each as a list of its columns.
///
/// @param thing what kind of row
/// @param plant the serial of the plant it belongs to
/// @param id what tells it from other rows of the plant
/// @param before its columns before; empty when there was no such row
/// @param after its columns after; empty when it was removed
record RowChange(
        Thing thing,
        int plant,
        List<String> id,
        Optional<List<@Nullable String>> before,
        Optional<List<@Nullable String>> after) {
    private static final JsonMapper JSON = new JsonMapper();

    enum Thing {
        PLANT,
        RENAME,
        FACT,
        NAME,
        ITEM,
        LOT;

        String stored() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        static Thing of(String stored) {
            return valueOf(stored.toUpperCase(java.util.Locale.ROOT));
        }
    }

    /// A plant that was not there: its facts and names are counted, not listed.
    static RowChange plant(PlantEdit edit, int names) {
        return new RowChange(
                Thing.PLANT,
                edit.serial,
                List.of(),
                Optional.empty(),
                Optional.of(List.of(edit.name.toString(), Integer.toString(names))));
    }

    static RowChange renamed(int plant, BotanicalName before, BotanicalName after) {
        return new RowChange(Thing.RENAME, plant, List.of(), Optional.of(columns(before)), Optional.of(columns(after)));
    }

    private static List<@Nullable String> columns(BotanicalName name) {
        List<@Nullable String> columns = new ArrayList<>();
        for (Object value : NameColumns.values(name)) {
            columns.add(value == null ? null : value.toString());
        }
        return columns;
    }

    static RowChange fact(int plant, FactShelf.Changed fact, Optional<FactShelf.Row> before) {
        return new RowChange(
                Thing.FACT,
                plant,
                List.of(fact.attribute(), Integer.toString(fact.source())),
                before.map(RowChange::columns),
                Optional.of(columns(fact.row())));
    }

    private static List<@Nullable String> columns(FactShelf.Row row) {
        return Arrays.asList(
                row.value(), Integer.toString(row.rank()), Long.toString(row.entered()), row.chosen() ? "1" : "0");
    }

    static RowChange name(int plant, NameShelf.Id id, Optional<NameShelf.Row> before, Optional<NameShelf.Row> after) {
        return new RowChange(
                Thing.NAME,
                plant,
                List.of(id.kind(), id.language(), id.text(), Integer.toString(id.source())),
                before.map(RowChange::columns),
                after.map(RowChange::columns));
    }

    private static List<@Nullable String> columns(NameShelf.Row row) {
        return Arrays.asList(Integer.toString(row.rank()), Integer.toString(row.place()));
    }

    static RowChange item(
            int plant, int number, String size, Optional<List<@Nullable String>> before, List<@Nullable String> after) {
        return new RowChange(Thing.ITEM, plant, List.of(Integer.toString(number), size), before, Optional.of(after));
    }

    static RowChange lot(int plant, String lot, Optional<List<@Nullable String>> before, List<@Nullable String> after) {
        return new RowChange(Thing.LOT, plant, List.of(lot), before, Optional.of(after));
    }

    static String write(List<@Nullable String> columns) {
        try {
            return JSON.writeValueAsString(columns);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a list of texts did not turn into JSON", impossible);
        }
    }

    static List<@Nullable String> read(String json) {
        try {
            List<@Nullable String> columns = new ArrayList<>();
            for (JsonNode column : JSON.readTree(json)) {
                columns.add(column.isNull() ? null : column.asText());
            }
            return columns;
        } catch (JsonProcessingException damaged) {
            throw new IllegalStateException("a row of the undo log is damaged", damaged);
        }
    }
}
