package org.benchleaf.search.substitute;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;

/// Reads the role of a plant from its facts: its strongest season by how much color it shows, and whether it is
/// unwelcome. The strengths are ours, no source.
final class RoleReader {
    /// Below this nobody buys a plant for it.
    private static final double NOTICED = 2;

    private static final MonthSet WINTER = MonthSet.between(Month.DECEMBER, Month.FEBRUARY);

    private RoleReader() {}

    /// @param grown whether the shop grows the species itself
    static Role read(PlantRecord original, Purpose purpose, boolean grown) {
        Facts facts = original.facts();
        List<Season> seasons = new ArrayList<>(seasons(facts));
        purpose.season().ifPresent(said -> {
            seasons.remove(said);
            seasons.add(0, said);
        });
        boolean unwelcome = Welcome.isRuled(facts) || !grown && Welcome.spreadsAbroad(facts);
        return new Role(purpose.use(), facts.value(Attributes.USES).orElse(Set.of()), seasons, unwelcome);
    }

    /// What a plant is looked at for, the strongest first.
    static List<Season> seasons(Facts facts) {
        Map<Season, Double> strengths = new EnumMap<>(Season.class);
        for (Season season : Season.values()) {
            double strength = strength(season, facts);
            if (strength >= NOTICED) {
                strengths.put(season, strength);
            }
        }
        return strengths.entrySet().stream()
                .sorted(Map.Entry.<Season, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static double strength(Season season, Facts facts) {
        return switch (season) {
            case FLOWER ->
                brightest(facts, Attributes.FLOWER_COLOR)
                        + Math.min(4, length(facts, Attributes.BLOOM)) * 0.25
                        + (isWoody(facts) ? 1 : 0)
                        - (isGreenish(facts, Attributes.FLOWER_COLOR) ? 3 : 0);
            case FALL_COLOR -> brightest(facts, Attributes.FALL_COLOR) + 0.25;
            case FRUIT ->
                brightest(facts, Attributes.FRUIT_COLOR)
                        - 0.5
                        + (facts.value(Attributes.FRUIT)
                                        .map(months -> !months.and(WINTER).isEmpty())
                                        .orElse(false)
                                ? 1
                                : 0);
            case FOLIAGE -> brightest(facts, Attributes.FOLIAGE_COLOR) + 0.5;
            case STEM ->
                brightest(facts, Attributes.STEM_COLOR)
                        + (facts.value(Attributes.STEM_MONTHS).isPresent() ? 0.5 : -1.5);
        };
    }

    private static double brightest(Facts facts, Attribute<List<PlantColor>> attribute) {
        return facts.value(attribute).orElse(List.of()).stream()
                .mapToDouble(color -> brightness(color.family()))
                .max()
                .orElse(0);
    }

    /// How far a color carries.
    private static double brightness(ColorFamily family) {
        return switch (family) {
            case RED -> 3.5;
            case ORANGE, PURPLE, YELLOW, PINK, BLUE -> 3;
            case WHITE, BLUE_GREEN, GRAY -> 2.5;
            case BLACK -> 2;
            case BROWN -> 1;
            case GREEN -> 0;
        };
    }

    /// A shrub or tree in flower is a sight from afar.
    private static boolean isWoody(Facts facts) {
        return facts.value(Attributes.LIFE_FORM)
                .map(forms -> forms.contains(LifeForm.SHRUB) || forms.contains(LifeForm.TREE))
                .orElse(false);
    }

    private static boolean isGreenish(Facts facts, Attribute<List<PlantColor>> attribute) {
        return facts.value(attribute)
                .map(colors -> !colors.isEmpty() && colors.getFirst().word().contains("green"))
                .orElse(false);
    }

    private static int length(Facts facts, Attribute<MonthSet> months) {
        return facts.value(months).map(set -> Integer.bitCount(set.bits())).orElse(0);
    }
}
