package org.benchleaf.shared;

import java.util.LinkedHashMap;
import java.util.Map;

/// Why a text was refused, as a value: a key and the details that its sentence needs.
///
/// Sentences live in the content module under `problem.` + key, so that they can be put into another language.
///
/// @param key what is wrong, for example `zone.unknown`; lower case, dots between parts
/// @param details named values for the sentence, `read` being the text as it stood
public record Problem(String key, Map<String, String> details) {
    public Problem {
        details = Map.copyOf(details);
    }

    /// A problem with the text that was read.
    public static Problem of(String key, String read) {
        return new Problem(key, Map.of("read", read));
    }

    /// The same problem with one more named detail.
    public Problem with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(details);
        more.put(name, value);
        return new Problem(key, more);
    }
}
