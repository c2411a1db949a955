package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.benchleaf.app.service.NameLookup.Found;
import org.benchleaf.app.service.NameLookup.NameAnswer;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.NameHtml;

/// A name looked up as JSON; the shape is described in `docs/names.md`.
final class NameJson {
    private final ObjectMapper mapper = new ObjectMapper();

    /// On one line, as a batch wants it.
    String line(NameAnswer answer) {
        return text(answer, mapper.writer());
    }

    /// For a person to read.
    String pretty(NameAnswer answer) {
        return text(answer, mapper.writerWithDefaultPrettyPrinter());
    }

    private String text(NameAnswer answer, ObjectWriter writer) {
        ObjectNode root = mapper.createObjectNode();
        root.put("typed", answer.typed());
        read(root.putObject("read"), answer.reading());
        ArrayNode plants = root.putArray("plants");
        answer.found().forEach(found -> plant(plants.addObject(), found));
        if (!answer.kin().isEmpty()) {
            ArrayNode kin = root.putArray("kin");
            answer.kin().forEach(plant -> {
                ObjectNode node = kin.addObject();
                node.put("key", plant.key().text());
                written(node, plant.name());
                otherNames(node, plant);
            });
        }
        try {
            return writer.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void read(ObjectNode node, NameReading reading) {
        node.put(
                "outcome",
                switch (reading) {
                    case NameReading.Read read -> "read";
                    case NameReading.Partly partly -> "partly";
                    case NameReading.Unread unread -> "unread";
                });
        reading.known().ifPresent(name -> parts(node, name));
        if (reading instanceof NameReading.Partly partly) {
            node.put("leftOver", partly.rest());
        }
        ArrayNode notes = node.putArray("notes");
        reading.notes()
                .forEach(note -> notes.addObject()
                        .put("kind", word(note.kind()))
                        .put("text", note.text())
                        .put("guess", note.kind().guess()));
    }

    private static void parts(ObjectNode node, BotanicalName name) {
        written(node, name);
        if (!name.genusMark().sign().isEmpty()) {
            node.put("genusMark", name.genusMark().sign());
        }
        node.put("genus", name.genus());
        name.species().ifPresent(species -> {
            if (!species.mark().sign().isEmpty()) {
                node.put("speciesMark", species.mark().sign());
            }
            node.put("species", species.text());
        });
        name.infraspecific()
                .ifPresent(below -> node.put("rank", below.rank().mark())
                        .put("belowSpecies", below.epithet().text()));
        name.group().ifPresent(group -> node.put("group", group));
        name.cultivar().ifPresent(cultivar -> node.put("cultivar", cultivar));
        name.tradeDesignation().ifPresent(trade -> node.put("tradeDesignation", trade));
    }

    static void written(ObjectNode node, BotanicalName name) {
        node.put("name", name.toString());
        node.put("label", name.labelName().toString());
        node.put("html", NameHtml.of(name));
        node.put("sort", name.sortKey());
    }

    private static void plant(ObjectNode node, Found found) {
        PlantRecord plant = found.plant();
        node.put("key", plant.key().text());
        written(node, plant.name());
        node.put("how", word(found.how()));
        node.put("matched", found.matched());
        if (!found.synonymBy().isEmpty()) {
            ArrayNode by = node.putArray("synonymBy");
            found.synonymBy().forEach(source -> by.add(source.text()));
        }
        otherNames(node, plant);
    }

    /// Common names by language, and synonyms with who gives them.
    static void otherNames(ObjectNode node, PlantRecord plant) {
        ObjectNode common = node.putObject("commonNames");
        for (CommonName name : plant.commonNames()) {
            common.withArray(name.language().getLanguage()).add(name.text());
        }
        ArrayNode synonyms = node.putArray("synonyms");
        plant.synonyms()
                .forEach(synonym -> synonyms.addObject()
                        .put("name", synonym.text())
                        .put("by", synonym.source().text()));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
