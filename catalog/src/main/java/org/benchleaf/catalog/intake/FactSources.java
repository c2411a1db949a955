package org.benchleaf.catalog.intake;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Source;

/// Who states a row's facts: one source for the row, others for single attributes (`deer=Rutgers NJAES E271`).
final class FactSources {
    private final Source usual;
    private final Map<String, Source> byAttribute = new HashMap<>();

    /// What parts sources; one that belongs to a source has a backslash before it.
    private static final Pattern BETWEEN = Pattern.compile("(?<!\\\\);");

    /// @param overrides `attribute=source`, several parted by `;`
    FactSources(Source usual, String overrides, String heading, RowNotes notes) {
        this.usual = usual;
        for (String piece : BETWEEN.split(overrides)) {
            int sign = piece.indexOf('=');
            String attribute = sign < 0 ? "" : piece.substring(0, sign).strip();
            String source = piece.substring(sign + 1).replace("\\;", ";").strip();
            if (piece.isBlank()) {
                continue;
            }
            if (sign < 0 || source.isEmpty() || Attributes.byId(attribute).isEmpty()) {
                notes.cellLeftOut(
                        heading,
                        Problem.of("fact-source.unknown", piece.strip()).with("attribute", attribute));
            } else {
                byAttribute.put(attribute, new Source(source));
            }
        }
    }

    Source usual() {
        return usual;
    }

    Source of(String attribute) {
        return byAttribute.getOrDefault(attribute, usual);
    }
}
