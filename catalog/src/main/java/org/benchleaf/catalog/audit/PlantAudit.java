package org.benchleaf.catalog.audit;

import java.util.List;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What is to be done about one plant.
///
/// @param key the plant
/// @param name its name
/// @param remarks what was found; empty when all is well
/// @param score 0 to 100: how much of what a buyer asks is known and undoubted
public record PlantAudit(PlantKey key, BotanicalName name, List<Remark> remarks, int score) {
    public PlantAudit {
        remarks = List.copyOf(remarks);
    }

    /// What kind of remark it is, from the worst.
    public enum Kind {
        /// Cannot be, or cannot be true beside another fact.
        IMPOSSIBLE,
        /// Sources disagree widely.
        CONFLICT,
        /// The name is an older one: another plant here has it as a synonym, or a list of older names says so.
        NAME,
        /// A fact that buyers ask for is missing.
        GAP
    }

    /// @param kind how it counts
    /// @param attribute which fact; `name` for a name
    /// @param problem what was found, with its values
    public record Remark(Kind kind, String attribute, Problem problem) {}
}
