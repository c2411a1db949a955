package org.benchleaf.render.page;

import java.time.LocalDate;
import java.util.Optional;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;

/// What a state or province says about selling the plant.
///
/// @param region where it holds
/// @param standing how strictly
/// @param since first day on which it holds, when known
/// @param remark exemptions and conditions in a few words; may be empty
/// @param source who states it
public record SaleNote(Region region, Standing standing, Optional<LocalDate> since, String remark, Source source) {
    /// How strictly a sale is ruled; the word is `standing.` + name.
    public enum Standing {
        PROHIBITED,
        RESTRICTED,
        ADVISED_AGAINST
    }
}
