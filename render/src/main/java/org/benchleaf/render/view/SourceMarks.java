package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.fact.Source;

/// Numbers the sources of a page in the order in which they are met.
final class SourceMarks {
    private final Wording words;
    private final List<Source> met = new ArrayList<>();
    private boolean inherited;

    SourceMarks(Wording words) {
        this.words = words;
    }

    /// The mark that stands behind a fact.
    String mark(Optional<Source> source, boolean fromSpecies) {
        inherited |= fromSpecies;
        String number = source.map(this::number).orElse("");
        return fromSpecies ? number + words.text("sheet.inherited-mark") : number;
    }

    private String number(Source source) {
        if (!met.contains(source)) {
            met.add(source);
        }
        return Integer.toString(met.indexOf(source) + 1);
    }

    /// `1 USDA PLANTS`, one text a source.
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < met.size(); i++) {
            lines.add(words.text(
                    "sheet.source",
                    Map.of(
                            "number",
                            Integer.toString(i + 1),
                            "source",
                            met.get(i).text())));
        }
        return lines;
    }

    /// What the sign of inherited facts means; empty when none was marked.
    String inheritedNote() {
        return inherited ? words.text("sheet.inherited") : "";
    }
}
