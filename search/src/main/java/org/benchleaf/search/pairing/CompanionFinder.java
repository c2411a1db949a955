package org.benchleaf.search.pairing;

import java.time.Month;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.rule.Shipment;

/// Finds companions: a need made of the plant's site and of the season in which it shows nothing. Safe for many
/// threads.
public final class CompanionFinder {
    private static final MonthSet GROWING = MonthSet.between(Month.MARCH, Month.OCTOBER);
    /// A companion stands below a plant taller than this, in cm, and at most at this share of its height.
    private static final int TALL = 120;

    private static final double BELOW = 0.75;
    private static final int AHEAD = 4;

    private final NeedSearch search;

    public CompanionFinder(NeedSearch search) {
        this.search = search;
    }

    /// Companions in stock, at most one of a genus, the best first.
    ///
    /// @param zone of the site, when it is known
    /// @param shipment where they go, when it is known; what may not be sold there is left out
    public List<Companion> of(
            PlantRecord plant, Optional<HardinessZone> zone, Optional<Shipment> shipment, YearWeek now, int limit) {
        Facts facts = plant.facts();
        MonthSet shown = Interest.months(facts);
        MonthSet gap = new MonthSet(GROWING.bits() & ~shown.bits());
        List<WeighedWish> wishes = new ArrayList<>();
        wishes.add(new WeighedWish(new Wish.InStock(1, Optional.empty(), Optional.empty()), 1, true));
        wishes.add(WeighedWish.of(new Wish.NotOfGenus(plant.name().genus())));
        shipment.map(Wish.ShipTo::new).map(WeighedWish::of).ifPresent(wishes::add);
        zone.map(Wish.HardyIn::new).map(WeighedWish::of).ifPresent(wishes::add);
        facts.value(Attributes.EXPOSURE)
                .orElse(Set.of())
                .forEach(light -> wishes.add(new WeighedWish(new Wish.GrowsIn(light), 0.7, false)));
        facts.value(Attributes.MOISTURE)
                .orElse(Set.of())
                .forEach(soil -> wishes.add(new WeighedWish(new Wish.LikesSoil(soil), 0.7, false)));
        if (zone.isEmpty()) {
            facts.value(Attributes.HARDINESS)
                    .ifPresent(range -> wishes.add(new WeighedWish(new Wish.HardyIn(range.coldest()), 1, false)));
        }
        if (!gap.isEmpty()) {
            wishes.add(new WeighedWish(new Wish.Shows(Season.FLOWER, Optional.of(gap), Optional.empty()), 2, false));
        }
        facts.value(Attributes.HEIGHT)
                .filter(height -> height.middleCm() > TALL)
                .ifPresent(height -> wishes.add(
                        new WeighedWish(new Wish.NoTallerThan((int) (height.middleCm() * BELOW)), 1.5, false)));
        NeedQuery query = new NeedQuery(
                new Need(wishes.stream().limit(NeedQuery.MOST_WISHES).toList()),
                "",
                now,
                0,
                Math.min(1000, limit * AHEAD + 10),
                Set.of());
        List<Companion> companions = new ArrayList<>();
        Set<String> genera = new HashSet<>();
        for (Match match : search.answer(query).matches()) {
            int fills = Interest.months(match.plant().facts()).bits() & ~shown.bits();
            if (companions.size() < limit
                    && fills != 0
                    && genera.add(match.plant().name().genus())) {
                companions.add(new Companion(match, new MonthSet(fills)));
            }
        }
        return companions;
    }
}
