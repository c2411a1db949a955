package org.benchleaf.catalog.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;

/// The doubts of an import, for facts that are in the catalog already.
public final class FactDoubts {
    private FactDoubts() {}

    /// What cannot be true, or hardly, of facts that stand together; by the fact that is doubted.
    public static Map<Attribute<?>, Problem> of(BotanicalName name, Facts facts) {
        Map<Attribute<?>, Problem> doubts = new LinkedHashMap<>();
        Plausibility.doubts(name, facts).forEach(doubt -> doubts.put(doubt.attribute(), doubt.problem()));
        return doubts;
    }

    /// Whether two sources say of one attribute what cannot both be so.
    public static boolean disagree(Fact<?> one, Fact<?> other) {
        return Conflicts.disagree(one, other);
    }
}
