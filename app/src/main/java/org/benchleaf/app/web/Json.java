package org.benchleaf.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.benchleaf.app.web.route.Reply;

/// Writes data for programs.
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    /// @param data maps, lists, texts, numbers and truth values
    static Reply reply(Object data) {
        try {
            return Reply.of("application/json", MAPPER.writeValueAsBytes(data));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
