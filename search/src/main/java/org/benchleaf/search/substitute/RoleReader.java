package org.benchleaf.search.substitute;

import java.time.Month;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.fit.Renown;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;

/// Reads the role of a plant from its facts: its strongest season by how much color it shows, and whether it is
/// unwelcome. The strengths are ours, no source.
final class RoleReader {
    /// Below this nobody buys a plant for it.
    private static final double NOTICED = 2;
    /// What the customer names outweighs the rest.
    private static final double STRONGEST = 8;

    private static final int MOST_SEASONS = 3;

    /// All seasons together pull at least so much in a plant that is bought for its looks.
    private static final double A_SIGHT = 5;

    /// What being known for a season adds to its strength.
    private static final double KNOWN = 1;

    /// What a season loses in a plant that is known for other things.
    private static final double UNSUNG = -1.5;

    private static final MonthSet WINTER = MonthSet.between(Month.DECEMBER, Month.FEBRUARY);

    private RoleReader() {}

    /// @param grown whether the shop grows the species itself
    static Role read(PlantRecord original, Purpose purpose, boolean grown) {
        Facts facts = original.facts();
        Map<Season, Double> strengths = strengths(facts);
        purpose.season().ifPresent(said -> strengths.put(said, STRONGEST));
        boolean unwelcome = Welcome.isRuled(facts) || !grown && Welcome.spreadsAbroad(facts);
        return new Role(purpose.use(), facts.value(Attributes.USES).orElse(Set.of()), shares(strengths), unwelcome);
    }

    /// What a plant is looked at for, the strongest first, each with its share; they add up to 1, or to less where
    /// all of it is little: privet flowers, and is bought for hedges. A plant that has one great season is
    /// bought for that one, a plant with several good ones for all of them.
    private static List<Role.Look> shares(Map<Season, Double> strengths) {
        double sum = Math.max(
                A_SIGHT,
                strengths.values().stream().mapToDouble(RoleReader::pull).sum());
        return strengths.entrySet().stream()
                .sorted(Map.Entry.<Season, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_SEASONS)
                .map(entry -> new Role.Look(entry.getKey(), pull(entry.getValue()) / sum))
                .toList();
    }

    private static double pull(double strength) {
        return strength - NOTICED;
    }

    private static Map<Season, Double> strengths(Facts facts) {
        Map<Season, Double> strengths = new EnumMap<>(Season.class);
        for (Season season : Season.values()) {
            double strength = strength(season, facts) + renown(season, facts);
            if (strength > NOTICED) {
                strengths.put(season, strength);
            }
        }
        return strengths;
    }

    private static double renown(Season season, Facts facts) {
        return Renown.of(new Wish.Shows(season, Optional.empty(), Optional.empty()), facts)
                .map(known -> known ? KNOWN : UNSUNG)
                .orElse(0.0);
    }

    private static double strength(Season season, Facts facts) {
        return switch (season) {
            case FLOWER ->
                brightest(facts, Attributes.FLOWER_COLOR)
                        + Math.min(4, length(facts, Attributes.BLOOM)) * 0.25
                        + (isWoody(facts) ? 1.5 : 0)
                        - (isGreenish(facts, Attributes.FLOWER_COLOR) ? 3 : 0);
            case FALL_COLOR -> brightest(facts, Attributes.FALL_COLOR) + 0.25;
            case FRUIT ->
                brightest(facts, Attributes.FRUIT_COLOR)
                        - 1
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
