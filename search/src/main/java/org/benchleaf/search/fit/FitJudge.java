package org.benchleaf.search.fit;

import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;

/// Judges one plant against a need and says why.
public final class FitJudge {
    /// The fit of any plant, answer or not: "why not this one?".
    public Fit fit(Need need, PlantRecord plant, PlantStock stock, YearWeek now) {
        throw new UnsupportedOperationException("not built yet: " + need + plant + stock + now);
    }
}
