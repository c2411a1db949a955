package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.content.Wording;

/// Imports as JSON; the shapes are described in `docs/spreadsheet.md`.
final class ImportJson {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private ImportJson() {}

    static String preview(ImportPlan plan, ImportDiff diff, Wording wording) {
        ObjectNode root = plan(plan, wording);
        root.put("newPlants", diff.newPlants())
                .put("changedPlants", diff.changedPlants())
                .put("samePlants", diff.samePlants())
                .put("newLots", diff.newLots())
                .put("changedLots", diff.changedLots())
                .put("sameLots", diff.sameLots());
        ArrayNode changes = root.putArray("changes");
        for (ImportDiff.Entry entry : diff.entries()) {
            ObjectNode node = changes.addObject()
                    .put("subject", entry.subject().name().toLowerCase(Locale.ROOT))
                    .put("new", entry.isNew())
                    .put("title", entry.title())
                    .put("plant", entry.plant());
            ArrayNode fields = node.putArray("fields");
            for (ImportDiff.Difference difference : entry.differences()) {
                ObjectNode field = fields.addObject().put("field", difference.field());
                put(field, "before", difference.before());
                put(field, "after", difference.after());
                field.put("source", difference.source()).put("shown", difference.shown());
            }
        }
        return text(root);
    }

    private static void put(ObjectNode node, String name, Optional<String> value) {
        if (value.isPresent()) {
            node.put(name, value.get());
        } else {
            node.putNull(name);
        }
    }

    /// @param revision the state after it; empty when nothing was loaded
    static String loaded(ImportPlan plan, Optional<Long> revision, Wording wording) {
        ObjectNode root = plan(plan, wording);
        root.put("loaded", revision.isPresent());
        revision.ifPresent(number -> root.put("revision", number));
        return text(root);
    }

    private static ObjectNode plan(ImportPlan plan, Wording wording) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("file", plan.file())
                .put("rows", plan.rows())
                .put("plants", plan.plants().size())
                .put("lots", plan.lots().size())
                .put("rowsLeftOut", plan.rowsLeftOut());
        ArrayNode findings = root.putArray("findings");
        plan.findings()
                .forEach(finding -> findings.addObject()
                        .put("row", finding.place().row())
                        .put("column", finding.place().column().orElse(""))
                        .put("problem", finding.problem().key())
                        .put("read", finding.problem().details().getOrDefault("read", ""))
                        .put("outcome", finding.outcome().name().toLowerCase(Locale.ROOT))
                        .put("text", wording.problem(finding.problem())));
        return root;
    }

    static String undone(UndoneImport undone) {
        return text(MAPPER.createObjectNode()
                .put("file", undone.file())
                .put("loadedAt", undone.appliedAt().toString())
                .put("revision", undone.revision().number())
                .put("plantsTakenOut", undone.plantsTakenOut())
                .put("plantsRestored", undone.plantsRestored())
                .put("lotsTakenOut", undone.lotsTakenOut())
                .put("lotsRestored", undone.lotsRestored()));
    }

    private static String text(ObjectNode root) {
        try {
            return MAPPER.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
