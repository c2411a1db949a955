package org.benchleaf.search.substitute;

import java.util.List;
import org.benchleaf.shared.name.TaxonName;

/// That lists name a plant instead of another.
///
/// @param original the plant replaced, or all of a genus
/// @param publishers who say so, each once: the shop, those of a place that is meant, then in alphabetical order
public record Replaced(TaxonName original, List<String> publishers) {
    public Replaced {
        publishers = List.copyOf(publishers);
    }
}
