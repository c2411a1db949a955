package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.intake.Column;
import org.benchleaf.catalog.intake.ColumnMap;

/// Column maps as JSON: what each heading of a file means.
final class MapJson {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private MapJson() {}

    static String names(Iterable<String> names) {
        ObjectNode root = MAPPER.createObjectNode();
        ArrayNode maps = root.putArray("maps");
        names.forEach(maps::add);
        return text(root);
    }

    /// @param saved where it was saved
    static String map(ColumnMap map, List<String> headings, Optional<Path> saved) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("map", map.id()).put("rows", map.rows().name().toLowerCase(Locale.ROOT));
        saved.ifPresent(file -> root.put("saved", file.toString()));
        ArrayNode all = root.putArray("headings");
        for (String heading : headings) {
            ObjectNode node = all.addObject().put("heading", heading);
            ArrayNode fields = node.putArray("fields");
            for (Column column : map.columns()) {
                if (column.headings().contains(heading)) {
                    ObjectNode field = fields.addObject().put("field", column.field());
                    column.unit().ifPresent(unit -> field.put("unit", unit));
                }
            }
        }
        return text(root);
    }

    private static String text(ObjectNode root) {
        try {
            return MAPPER.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
