package org.benchleaf.catalog.names;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.shared.name.Rank;

/// The marks of ranks below species, in the spellings met in lists.
final class Ranks {
    private static final Map<String, Rank> MARKS = Map.ofEntries(
            Map.entry("subsp", Rank.SUBSPECIES),
            Map.entry("ssp", Rank.SUBSPECIES),
            Map.entry("subspecies", Rank.SUBSPECIES),
            Map.entry("var", Rank.VARIETY),
            Map.entry("varietas", Rank.VARIETY),
            Map.entry("f", Rank.FORM),
            Map.entry("fo", Rank.FORM),
            Map.entry("form", Rank.FORM),
            Map.entry("forma", Rank.FORM));

    private Ranks() {}

    /// The rank of `subsp.`, `ssp`, `var.`, `f.`, `forma`, `nothovar.`
    static Optional<Rank> of(String word) {
        String bare = word.toLowerCase(Locale.ROOT);
        bare = bare.endsWith(".") ? bare.substring(0, bare.length() - 1) : bare;
        return Optional.ofNullable(MARKS.get(bare.startsWith("notho") ? bare.substring("notho".length()) : bare));
    }

    static boolean ofHybrid(String word) {
        return word.toLowerCase(Locale.ROOT).startsWith("notho");
    }
}
