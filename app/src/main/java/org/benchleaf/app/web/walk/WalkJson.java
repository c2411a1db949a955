package org.benchleaf.app.web.walk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Optional;
import org.benchleaf.app.web.route.Reply;

/// Data to and from a telephone.
final class WalkJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private WalkJson() {}

    static byte[] bytes(Object data) {
        try {
            return MAPPER.writeValueAsBytes(data);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static Reply reply(Object data) {
        return Reply.of("application/json", bytes(data));
    }

    /// Empty when it is no JSON.
    static Optional<JsonNode> read(byte[] body) {
        try {
            return Optional.ofNullable(MAPPER.readTree(body));
        } catch (IOException noJson) {
            return Optional.empty();
        }
    }

    /// A field's text; empty when it is missing or null.
    static Optional<String> text(JsonNode node, String field) {
        JsonNode value = node.path(field);
        return value.isTextual() ? Optional.of(value.textValue()) : Optional.empty();
    }

    /// A field's whole number; empty when it is missing, null, or no whole number of this size.
    static Optional<Integer> number(JsonNode node, String field) {
        JsonNode value = node.path(field);
        return value.canConvertToInt() && value.isIntegralNumber() ? Optional.of(value.intValue()) : Optional.empty();
    }
}
