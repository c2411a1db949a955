package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.intake.Finding;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.content.Wording;

/// Imports as JSON, written as they are read: a plan may have more findings than fit into memory. The
/// shapes are described in `docs/spreadsheet.md`.
final class ImportJson {
    private static final JsonFactory JSON = new JsonFactory();

    private ImportJson() {}

    /// Writes the members of one object.
    private interface Members {
        void write(JsonGenerator json) throws IOException;
    }

    static void preview(ImportPlan plan, ImportDiff diff, Wording wording, PrintWriter out) {
        write(out, json -> {
            plan(plan, wording, json);
            json.writeNumberField("newPlants", diff.newPlants());
            json.writeNumberField("changedPlants", diff.changedPlants());
            json.writeNumberField("samePlants", diff.samePlants());
            json.writeNumberField("newLots", diff.newLots());
            json.writeNumberField("changedLots", diff.changedLots());
            json.writeNumberField("sameLots", diff.sameLots());
            json.writeArrayFieldStart("changes");
            for (ImportDiff.Entry entry : diff.entries()) {
                entry(entry, json);
            }
            json.writeEndArray();
        });
        out.println();
    }

    private static void entry(ImportDiff.Entry entry, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("subject", entry.subject().name().toLowerCase(Locale.ROOT));
        json.writeBooleanField("new", entry.isNew());
        json.writeStringField("title", entry.title());
        json.writeStringField("plant", entry.plant());
        json.writeArrayFieldStart("fields");
        for (ImportDiff.Difference difference : entry.differences()) {
            json.writeStartObject();
            json.writeStringField("field", difference.field());
            text("before", difference.before(), json);
            text("after", difference.after(), json);
            json.writeStringField("source", difference.source());
            json.writeBooleanField("shown", difference.shown());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void text(String name, Optional<String> value, JsonGenerator json) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(name, value.get());
        } else {
            json.writeNullField(name);
        }
    }

    /// @param revision the state after it; empty when nothing was loaded
    static void loaded(ImportPlan plan, Optional<Long> revision, Wording wording, PrintWriter out) {
        write(out, json -> {
            plan(plan, wording, json);
            json.writeBooleanField("loaded", revision.isPresent());
            if (revision.isPresent()) {
                json.writeNumberField("revision", revision.get());
            }
        });
        out.println();
    }

    private static void plan(ImportPlan plan, Wording wording, JsonGenerator json) throws IOException {
        json.writeStringField("file", plan.file());
        json.writeNumberField("rows", plan.rows());
        json.writeNumberField("plants", plan.plants().size());
        json.writeNumberField("lots", plan.lots().size());
        json.writeNumberField("rowsLeftOut", plan.rowsLeftOut());
        json.writeArrayFieldStart("findings");
        for (Finding finding : plan.findings()) {
            json.writeStartObject();
            json.writeNumberField("row", finding.place().row());
            json.writeStringField("column", finding.place().column().orElse(""));
            json.writeStringField("problem", finding.problem().key());
            json.writeStringField("read", finding.problem().details().getOrDefault("read", ""));
            json.writeStringField("outcome", finding.outcome().name().toLowerCase(Locale.ROOT));
            json.writeStringField("text", wording.problem(finding.problem()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static String undone(UndoneImport undone) {
        StringWriter text = new StringWriter();
        write(text, json -> {
            json.writeStringField("file", undone.file());
            json.writeStringField("loadedAt", undone.appliedAt().toString());
            json.writeNumberField("revision", undone.revision().number());
            json.writeNumberField("plantsTakenOut", undone.plantsTakenOut());
            json.writeNumberField("plantsRestored", undone.plantsRestored());
            json.writeNumberField("lotsTakenOut", undone.lotsTakenOut());
            json.writeNumberField("lotsRestored", undone.lotsRestored());
        });
        return text.toString();
    }

    private static void write(Writer out, Members members) {
        try (JsonGenerator json = JSON.createGenerator(out)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .setPrettyPrinter(new DefaultPrettyPrinter())) {
            json.writeStartObject();
            members.write(json);
            json.writeEndObject();
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
