package org.benchleaf.render.figure;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.color.Srgb;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;

/// Which leaves a plant wears in each month, worked out from what is stated of its foliage.
///
/// Months without a statement follow the usual year of zone 6 (common practice, no source): leaves out April to
/// October, new leaves April and May, fall color October and November.
final class YearBands {
    static final MonthSet IN_LEAF = MonthSet.between(Month.APRIL, Month.OCTOBER);
    static final MonthSet NEW_LEAVES = MonthSet.between(Month.APRIL, Month.MAY);
    static final MonthSet USUAL_FALL = MonthSet.between(Month.OCTOBER, Month.NOVEMBER);
    private static final MonthSet WINTER = MonthSet.between(Month.DECEMBER, Month.MARCH);
    /// Leaves whose color nobody has stated: a gray green that claims nothing.
    static final Srgb UNSTATED = new Srgb(0xA3, 0xAD, 0x9C);

    /// The leaves of one month.
    ///
    /// @param colors at least one
    /// @param sparse whether many have fallen
    record Leaves(List<Srgb> colors, boolean sparse) {}

    private YearBands() {}

    /// Months without leaves are absent.
    static Map<Month, Leaves> foliage(YearLook year) {
        Map<Month, Leaves> leaves = new EnumMap<>(Month.class);
        boolean anythingKnown = year.persistence().isPresent()
                || !year.summerFoliage().isEmpty()
                || !year.springFoliage().isEmpty()
                || !year.fallFoliage().isEmpty();
        if (!anythingKnown) {
            return leaves;
        }
        Foliage persistence = year.persistence().orElse(Foliage.DECIDUOUS);
        MonthSet fall = fallMonths(year);
        List<Srgb> summer = summer(year);
        List<Srgb> winter = year.winterFoliage().isEmpty() ? summer : colors(year.winterFoliage());
        for (Month month : Month.values()) {
            boolean winterMonth = WINTER.contains(month);
            if (!year.fallFoliage().isEmpty() && fall.contains(month)) {
                leaves.put(month, new Leaves(colors(year.fallFoliage()), false));
            } else if (!year.springFoliage().isEmpty() && NEW_LEAVES.contains(month)) {
                leaves.put(month, new Leaves(colors(year.springFoliage()), false));
            } else if (persistence == Foliage.EVERGREEN) {
                leaves.put(month, new Leaves(winterMonth ? winter : summer, false));
            } else if (persistence == Foliage.SEMI_EVERGREEN) {
                leaves.put(month, new Leaves(winterMonth ? winter : summer, winterMonth));
            } else if (IN_LEAF.contains(month) && !beyondFall(fall, month, year)) {
                leaves.put(month, new Leaves(summer, false));
            }
        }
        return leaves;
    }

    static MonthSet fallMonths(YearLook year) {
        return year.fallMonths().filter(months -> !months.isEmpty()).orElse(USUAL_FALL);
    }

    /// A deciduous plant is bare after its fall color, even where that ends before October does.
    private static boolean beyondFall(MonthSet fall, Month month, YearLook year) {
        if (year.fallFoliage().isEmpty() || fall.runs().size() != 1) {
            return false;
        }
        Month last = fall.runs().getFirst().getLast();
        return last.getValue() >= Month.AUGUST.getValue() && month.getValue() > last.getValue();
    }

    private static List<Srgb> summer(YearLook year) {
        return year.summerFoliage().isEmpty() ? List.of(UNSTATED) : colors(year.summerFoliage());
    }

    static List<Srgb> colors(List<PlantColor> colors) {
        List<Srgb> values = new ArrayList<>();
        colors.forEach(color -> values.add(color.srgb()));
        return values;
    }
}
