package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.content.Wording;

/// What came of a print, as JSON; the shape is described in `docs/printing.md`.
final class PressJson {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private PressJson() {}

    static String of(PressOutcome outcome, Wording wording) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("pages", outcome.pages());
        ArrayNode findings = root.putArray("findings");
        outcome.findings()
                .forEach(finding -> findings.addObject()
                        .put("plant", finding.subject())
                        .put("field", finding.field())
                        .put("kind", finding.problem().key())
                        .put("remedy", wording.problem(finding.problem())));
        try {
            return MAPPER.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
