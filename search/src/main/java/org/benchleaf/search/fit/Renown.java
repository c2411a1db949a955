package org.benchleaf.search.fit;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.KnownFor;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;

/// Whether a plant is one of those that are named first when somebody has a wish.
public final class Renown {
    private Renown() {}

    /// Empty when nothing is known, or when the wish is none that plants are known for.
    public static Optional<Boolean> of(Wish wish, Facts facts) {
        Set<KnownFor> words = words(wish);
        return words.isEmpty()
                ? Optional.empty()
                : facts.value(Attributes.KNOWN_FOR).map(known -> !Collections.disjoint(known, words));
    }

    /// Whether a plant is known for what is wished.
    public static boolean isKnown(Wish wish, Facts facts) {
        return of(wish, facts).orElse(false);
    }

    /// Any of these makes a plant known for the wish.
    public static Set<KnownFor> words(Wish wish) {
        return switch (wish) {
            case Wish.GrowsIn(var light) -> shade(light);
            case Wish.LikesSoil(var moisture) -> ground(moisture);
            case Wish.LikesTexture(var texture) when texture == SoilTexture.CLAY -> EnumSet.of(KnownFor.CLAY);
            case Wish.Bears(var stress) -> EnumSet.of(stress(stress));
            case Wish.LeftAloneBy(var browser) when browser == Wish.Browser.DEER -> EnumSet.of(KnownFor.DEER);
            case Wish.Shows shows ->
                switch (shows.season()) {
                    case FLOWER -> EnumSet.of(KnownFor.FLOWERS);
                    case FOLIAGE -> EnumSet.of(KnownFor.FOLIAGE);
                    case FALL_COLOR -> EnumSet.of(KnownFor.FALL_COLOR);
                    case FRUIT -> EnumSet.of(KnownFor.FRUIT);
                    // bark is there all year; what has its time is twigs in winter
                    case STEM ->
                        shows.months().isPresent() || shows.color().isPresent()
                                ? EnumSet.of(KnownFor.STEMS)
                                : EnumSet.of(KnownFor.BARK, KnownFor.STEMS);
                };
            case Wish.Fragrant() -> EnumSet.of(KnownFor.FRAGRANCE);
            case Wish.Feeds(var wildlife) ->
                switch (wildlife) {
                    case NECTAR, POLLEN, LARVAL_HOST -> EnumSet.of(KnownFor.POLLINATORS);
                    case BIRD_FOOD, COVER, NESTING -> EnumSet.of(KnownFor.BIRDS);
                };
            case Wish.ServesAs(var use) -> use(use);
            default -> Set.of();
        };
    }

    /// All that a plant may be known for as something that is planted for a use.
    public static Set<KnownFor> uses() {
        EnumSet<KnownFor> all = EnumSet.noneOf(KnownFor.class);
        Arrays.stream(Use.values()).forEach(use -> all.addAll(use(use)));
        return all;
    }

    private static Set<KnownFor> shade(Exposure light) {
        return switch (light) {
            case PART_SHADE, FULL_SHADE -> EnumSet.of(KnownFor.SHADE, KnownFor.DRY_SHADE);
            case FULL_SUN, PART_SUN -> Set.of();
        };
    }

    private static Set<KnownFor> ground(Moisture moisture) {
        return switch (moisture) {
            case DRY -> EnumSet.of(KnownFor.DROUGHT, KnownFor.DRY_SHADE);
            case WET -> EnumSet.of(KnownFor.WET_GROUND, KnownFor.RAIN_GARDEN);
            case MEDIUM, MOIST -> Set.of();
        };
    }

    private static KnownFor stress(Wish.Stress stress) {
        return switch (stress) {
            case DROUGHT -> KnownFor.DROUGHT;
            case WET_FEET -> KnownFor.WET_GROUND;
            case SALT_IN_SOIL, SALT_SPRAY -> KnownFor.SALT;
            case COMPACTION -> KnownFor.CITY;
            case JUGLONE -> KnownFor.WALNUT;
        };
    }

    private static Set<KnownFor> use(Use use) {
        return switch (use) {
            case HEDGE -> EnumSet.of(KnownFor.HEDGE);
            case SCREEN -> EnumSet.of(KnownFor.SCREEN);
            case FOUNDATION -> EnumSet.of(KnownFor.FOUNDATION);
            case MASSING -> EnumSet.of(KnownFor.MASSING);
            case GROUNDCOVER -> EnumSet.of(KnownFor.GROUNDCOVER);
            case SPECIMEN -> EnumSet.of(KnownFor.SPECIMEN);
            case CONTAINER -> EnumSet.of(KnownFor.CONTAINER);
            case RAIN_GARDEN -> EnumSet.of(KnownFor.RAIN_GARDEN);
            case SLOPE -> EnumSet.of(KnownFor.SLOPE);
            case STREET -> EnumSet.of(KnownFor.STREET);
            case SHADE_TREE -> EnumSet.of(KnownFor.SHADE_TREE);
            case WOODLAND -> EnumSet.of(KnownFor.WOODLAND);
            case BORDER -> EnumSet.of(KnownFor.BORDER);
            case EDGING -> EnumSet.of(KnownFor.EDGING);
            case CUT_FLOWER -> EnumSet.of(KnownFor.CUT_FLOWER);
            case POLLINATOR_GARDEN -> EnumSet.of(KnownFor.POLLINATORS);
            case NATURALIZING -> EnumSet.of(KnownFor.NATURALIZING);
            case LIVING_WALL -> EnumSet.of(KnownFor.LIVING_WALL);
        };
    }
}
