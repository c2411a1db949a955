package org.benchleaf.search.substitute;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.search.fit.Renown;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Shipment;

/// Makes the need that a plant's role is. The weights are ours, no source: what the plant is bought for counts
/// most, then its kind and size, then where it grows, then the rest.
final class RoleNeed {
    /// When nobody says how many, what there is plenty of comes first.
    private static final int PLENTY = 100;

    /// What all that it is looked at for counts together, where it is a sight.
    private static final double SEASONS = 5;

    private static final double LEAST_SEASON = 0.4;
    private static final double NATIVE = 2;
    /// What several publishers name in its place has been thought of by many who know both plants.
    private static final double NAMED = 5;
    /// What the shop's own sellers say comes right after what the customer says: less than any wish that is asked, and
    /// before all that is taken from the original.
    private static final double OWN_WORD = 0.1;
    /// Lists speak of the species, and a cultivar may be much smaller or of another color; of a plant that is sold out
    /// and does no harm another of its kind comes first.
    private static final double NAMED_ALSO = 2.5;
    private static final double KNOWN_USE = 0.8;
    private static final double OTHER_USE = 0.3;
    private static final double GROUND = 2;
    /// What uses count that are not the one that was said.
    private static final double UNSAID = 0.5;

    private static final int MOST_USES = 5;

    private final SubstituteQuery query;
    private final Role role;
    private final Advice advice;
    private final Facts facts;
    private final WishList wishes;
    private final Shape shape;

    private RoleNeed(SubstituteQuery query, Role role, Advice advice) {
        this.query = query;
        this.advice = advice;
        this.role = role;
        this.facts = query.original().facts();
        this.wishes = new WishList(query.wishes());
        this.shape = new Shape(role, facts, wishes);
    }

    static Need of(SubstituteQuery query, Role role, Advice advice) {
        return new RoleNeed(query, role, advice).need();
    }

    /// The first wishes are the last to be left out.
    private Need need() {
        stock();
        query.shipment().ifPresent(to -> wishes.whole(WeighedWish.of(new Wish.ShipTo(to))));
        query.wishes().forEach(wishes::whole);
        role.use().ifPresent(use -> wishes.whole(new WeighedWish(new Wish.ServesAs(use), 3, false)));
        advice.ownWish().ifPresent(own -> wishes.whole(new WeighedWish(own, OWN_WORD, false)));
        if (!advice.isEmpty()) {
            boolean meant =
                    role.unwelcome() && query.original().name().cultivar().isEmpty();
            wishes.put(advice.wish(), meant ? NAMED : NAMED_ALSO);
        }
        shape.ask();
        seasons();
        uses();
        if (role.unwelcome()) {
            wishes.add(new Wish.NativeTo(query.shipment().map(Shipment::to).map(place -> place.region())), NATIVE);
        } else {
            relatives();
        }
        new Place(facts, wishes).ask();
        return wishes.need();
    }

    /// What cannot be had at all is no substitute; enough of it is better than some.
    private void stock() {
        Demand demand = query.demand();
        if (demand.stockedOnly()) {
            wishes.whole(new WeighedWish(new Wish.InStock(1, demand.size(), demand.by()), 1, true));
            if (demand.count() > 1) {
                wishes.put(new Wish.InStock(demand.count(), demand.size(), demand.by()), 3);
            } else {
                wishes.put(new Wish.InStock(PLENTY, demand.size(), demand.by()), 0.75);
            }
        }
    }

    private void uses() {
        boolean said = role.use().isPresent();
        role.uses().stream()
                .filter(use -> role.use().stream().noneMatch(use::equals))
                .sorted()
                .limit(MOST_USES)
                .forEach(use -> {
                    boolean ground = use == Use.GROUNDCOVER && !said && shape.coversGround();
                    wishes.put(new Wish.ServesAs(use), ground ? GROUND : weight(use) * (said ? UNSAID : 1));
                });
    }

    private double weight(Use use) {
        return Renown.isKnown(new Wish.ServesAs(use), facts) ? KNOWN_USE : OTHER_USE;
    }

    private void seasons() {
        for (Role.Look look : role.looks()) {
            Season season = look.season();
            double weight = Math.max(LEAST_SEASON, SEASONS * look.share());
            Optional<ColorFamily> color = facts.value(Attributes.colors(season)).orElse(List.of()).stream()
                    .findFirst()
                    .map(PlantColor::family);
            // for showing at all, for the time, and for the color: another color is nearer than nothing
            wishes.put(new Wish.Shows(season, Optional.empty(), Optional.empty()), weight / 2);
            if (season == Season.FLOWER) {
                facts.value(Attributes.BLOOM)
                        .filter(months -> !months.isEmpty())
                        .ifPresent(months ->
                                wishes.put(new Wish.Shows(season, Optional.of(months), Optional.empty()), weight / 4));
            }
            if (color.isPresent()) {
                wishes.put(
                        new Wish.Shows(season, Optional.empty(), color),
                        season == Season.FLOWER ? weight / 4 : weight / 2);
            }
        }
    }

    private void relatives() {
        String genus = query.original().name().genus();
        if (query.wishes().stream().anyMatch(wish -> wish.wish().equals(new Wish.NotOfGenus(genus)))) {
            return;
        }
        query.original()
                .name()
                .species()
                .ifPresent(species -> wishes.put(new Wish.OfSpecies(genus, species.text()), 3));
        wishes.put(new Wish.OfGenus(genus), 1);
    }
}
