package org.benchleaf.search;

import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.search.substitute.Advised;
import org.benchleaf.search.substitute.Publication;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.Wish;

/// What lists name instead of what, in few words.
public final class Lists {
    private Lists() {}

    public static Advised advised(String original, String instead, Publication list) {
        return new Advised(new TaxonName(original), new TaxonName(instead), list);
    }

    /// @param publishers how many name which taxon
    public static Wish.NamedInstead namedInstead(String original, Map<String, Integer> publishers) {
        return new Wish.NamedInstead(
                new TaxonName(original),
                publishers.entrySet().stream()
                        .collect(Collectors.toMap(named -> new TaxonName(named.getKey()), Map.Entry::getValue)));
    }
}
