package org.benchleaf.search.substitute;

import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.KnownFor;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;

/// Where a plant grows and what it bears and gives there, as wishes: most of all what it is known for. The weights
/// are ours, no source.
final class Place {
    /// What a plant is known for is why it stands where few others do.
    private static final double KNOWN_SITE = 2;
    /// A site that few plants bear is likely to be the one: deep shade, wet ground.
    private static final double EXTREME = 1;

    /// Birds and bees are what many plant for, as others do for a hedge.
    private static final double FOR_WILDLIFE = 1.2;

    private static final double USUAL = 0.25;
    private static final double TOLERANCE = 0.3;

    private final Facts facts;
    private final WishList wishes;

    Place(Facts facts, WishList wishes) {
        this.facts = facts;
        this.wishes = wishes;
    }

    void ask() {
        known();
        site();
        rest();
    }

    /// What it is known for besides its looks and uses.
    private void known() {
        Set<KnownFor> known = facts.value(Attributes.KNOWN_FOR).orElse(Set.of());
        known.stream().sorted().forEach(this::known);
    }

    private void known(KnownFor word) {
        switch (word) {
            case SHADE, DRY_SHADE -> wishes.add(new Wish.GrowsIn(Exposure.FULL_SHADE), KNOWN_SITE);
            case WET_GROUND -> wishes.add(new Wish.LikesSoil(Moisture.WET), KNOWN_SITE);
            case SALT -> wishes.add(new Wish.Bears(Wish.Stress.SALT_IN_SOIL), KNOWN_SITE / 2);
            case DROUGHT -> wishes.add(new Wish.Bears(Wish.Stress.DROUGHT), 0.8);
            case CITY -> wishes.add(new Wish.Bears(Wish.Stress.COMPACTION), 0.5);
            case DEER -> wishes.add(new Wish.LeftAloneBy(Wish.Browser.DEER), 0.8);
            case FRAGRANCE -> wishes.add(new Wish.Fragrant(), 0.6);
            case POLLINATORS -> wishes.add(new Wish.Feeds(Wildlife.NECTAR), FOR_WILDLIFE);
            case BIRDS -> wishes.add(new Wish.Feeds(Wildlife.BIRD_FOOD), FOR_WILDLIFE);
            default -> {
                // its looks and uses are asked for elsewhere
            }
        }
    }

    private void site() {
        facts.value(Attributes.HARDINESS).ifPresent(range -> wishes.add(new Wish.HardyIn(middle(range)), 0.5));
        Set<Exposure> light = facts.value(Attributes.EXPOSURE).orElse(Set.of());
        light.stream()
                .sorted()
                .forEach(one -> wishes.add(new Wish.GrowsIn(one), one == Exposure.FULL_SHADE ? EXTREME : USUAL));
        Set<Moisture> soil = facts.value(Attributes.MOISTURE).orElse(Set.of());
        soil.stream()
                .sorted()
                .forEach(one ->
                        wishes.add(new Wish.LikesSoil(one), one == Moisture.WET && soil.size() < 3 ? EXTREME : USUAL));
    }

    /// Nobody said where it stands: likeliest in the middle of where the original grows.
    private static HardinessZone middle(ZoneRange range) {
        return range.hasWarmLimit()
                ? new HardinessZone((range.coldest().half() + range.warmest().half()) / 2)
                : range.coldest();
    }

    private void rest() {
        if (facts.value(Attributes.DROUGHT_TOLERANCE)
                .map(known -> known.compareTo(Tolerance.MEDIUM) >= 0)
                .orElse(false)) {
            wishes.add(new Wish.Bears(Wish.Stress.DROUGHT), TOLERANCE);
        }
        if (facts.value(Attributes.DEER)
                .map(known -> known.compareTo(DamageRating.SELDOM) <= 0)
                .orElse(false)) {
            wishes.add(new Wish.LeftAloneBy(Wish.Browser.DEER), TOLERANCE);
        }
        for (var creature : Hazards.concerning(facts)) {
            wishes.add(new Wish.SafeFor(creature), TOLERANCE);
        }
    }
}
