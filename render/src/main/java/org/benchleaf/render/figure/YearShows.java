package org.benchleaf.render.figure;

import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.measure.MonthSet;

/// In which months a plant is worth looking at: in flower, in fall color, in fruit, or for its stems.
public final class YearShows {
    private YearShows() {}

    public static MonthSet months(YearLook year) {
        int bits = bits(year.flower().map(Show::months))
                | bits(year.fruit().map(Show::months))
                | bits(year.stem().map(Show::months));
        return new MonthSet(
                year.fallFoliage().isEmpty()
                        ? bits
                        : bits | YearBands.fallMonths(year).bits());
    }

    private static int bits(java.util.Optional<MonthSet> months) {
        return months.map(MonthSet::bits).orElse(0);
    }
}
