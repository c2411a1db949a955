package org.benchleaf.search.pairing;

import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Season;

/// When a plant is worth looking at, and for what. Where a plant shows fall color or stems and does not say
/// when, the usual months of the northern states are taken: common practice, no source.
public final class Interest {
    private static final MonthSet USUAL_FALL = MonthSet.between(Month.OCTOBER, Month.NOVEMBER);
    private static final MonthSet USUAL_LEAVES = MonthSet.between(Month.MAY, Month.SEPTEMBER);
    private static final MonthSet USUAL_STEMS = MonthSet.between(Month.DECEMBER, Month.MARCH);
    private static final MonthSet WINTER = MonthSet.between(Month.NOVEMBER, Month.MARCH);

    private Interest() {}

    /// The months of each season in which something is seen. Leaves count when they are not plain green, and
    /// evergreen ones in winter.
    public static Map<Season, MonthSet> of(Facts facts) {
        Map<Season, MonthSet> months = new EnumMap<>(Season.class);
        put(months, Season.FLOWER, facts.value(Attributes.BLOOM).orElse(MonthSet.NONE));
        if (hasColor(facts, Attributes.FALL_COLOR)) {
            put(months, Season.FALL_COLOR, facts.value(Attributes.FALL_MONTHS).orElse(USUAL_FALL));
        }
        put(months, Season.FRUIT, facts.value(Attributes.FRUIT).orElse(MonthSet.NONE));
        if (hasColor(facts, Attributes.STEM_COLOR)
                || facts.value(Attributes.STEM_MONTHS).isPresent()) {
            put(months, Season.STEM, facts.value(Attributes.STEM_MONTHS).orElse(USUAL_STEMS));
        }
        put(months, Season.FOLIAGE, leaves(facts));
        return months;
    }

    /// All months in which something is seen.
    public static MonthSet months(Facts facts) {
        int bits = 0;
        for (MonthSet months : of(facts).values()) {
            bits |= months.bits();
        }
        return new MonthSet(bits);
    }

    private static MonthSet leaves(Facts facts) {
        boolean evergreen = facts.value(Attributes.FOLIAGE)
                .map(foliage -> foliage == Foliage.EVERGREEN)
                .orElse(false);
        boolean colored = facts.value(Attributes.FOLIAGE_COLOR).orElse(List.of()).stream()
                .anyMatch(color -> !isPlainGreen(color));
        int bits = (colored ? USUAL_LEAVES.bits() : 0) | (evergreen ? WINTER.bits() : 0);
        return new MonthSet(bits);
    }

    private static boolean isPlainGreen(PlantColor color) {
        return color.word().equals("green") || color.word().endsWith(" green");
    }

    private static boolean hasColor(Facts facts, Attribute<List<PlantColor>> attribute) {
        return facts.value(attribute).map(colors -> !colors.isEmpty()).orElse(false);
    }

    private static void put(Map<Season, MonthSet> months, Season season, MonthSet seen) {
        if (!seen.isEmpty()) {
            months.put(season, seen);
        }
    }
}
