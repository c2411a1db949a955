package org.benchleaf.render.page;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.ZoneRange;

/// The value of a fact before it is put into words.
public sealed interface FactValue {
    /// Words of a fixed vocabulary, in its order.
    record Terms(List<? extends Term> terms) implements FactValue {
        public Terms {
            terms = List.copyOf(terms);
        }
    }

    /// A length, written in the units of the page.
    record Length(LengthRange range) implements FactValue {}

    record Zones(ZoneRange range) implements FactValue {}

    record HeatZones(HeatZoneRange range) implements FactValue {}

    record Acidity(PhRange range) implements FactValue {}

    record Months(MonthSet months) implements FactValue {}

    /// Colors, the most typical first; none means known to have none.
    record Colors(List<PlantColor> colors) implements FactValue {
        public Colors {
            colors = List.copyOf(colors);
        }
    }

    /// States and provinces.
    record Regions(Set<Region> regions) implements FactValue {
        public Regions {
            regions = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(regions));
        }
    }

    /// Free text of the catalog, printed as it stands.
    record Text(String text) implements FactValue {}
}
