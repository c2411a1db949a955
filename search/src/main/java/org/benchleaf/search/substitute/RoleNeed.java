package org.benchleaf.search.substitute;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;

/// Makes the need that a plant's role is. The weights are ours, no source: what the plant is bought for counts
/// most, then its kind and size, then where it grows, then the rest.
final class RoleNeed {
    /// A size is the same within these shares of the original's.
    private static final double TALLER = 1.15;

    private static final double MUCH_TALLER = 1.6;
    private static final double LOWER = 0.75;
    private static final double MUCH_LOWER = 0.5;
    /// Steps of sizes asked for, so that alike originals ask alike: a tenth of a power of e, about a tenth of
    /// the length.
    private static final double STEPS = 10;
    /// A site that few plants bear is likely to be the one: deep shade, wet ground.
    private static final double EXTREME = 1;

    private static final double USUAL = 0.4;

    /// When nobody says how many, what there is plenty of comes first.
    private static final int PLENTY = 100;

    /// What all that it is looked at for counts together.
    private static final double SEASONS = 4;

    /// A climber grown over the ground stands no higher, in cm.
    private static final int LYING_CM = 45;

    private final SubstituteQuery query;
    private final Role role;
    private final Facts facts;
    private final List<WeighedWish> wishes = new ArrayList<>();

    private RoleNeed(SubstituteQuery query, Role role) {
        this.query = query;
        this.role = role;
        this.facts = query.original().facts();
    }

    static Need of(SubstituteQuery query, Role role) {
        return new RoleNeed(query, role).need();
    }

    private Need need() {
        stock();
        query.shipment().ifPresent(to -> wishes.add(WeighedWish.of(new Wish.ShipTo(to))));
        wishes.addAll(query.wishes());
        uses();
        seasons();
        kind();
        size();
        if (!role.unwelcome()) {
            relatives();
        } else {
            add(new Wish.NativeTo(query.shipment().map(Shipment::to).map(place -> place.region())), 2);
        }
        site();
        rest();
        return new Need(wishes.stream().limit(NeedQuery.MOST_WISHES).toList());
    }

    private void add(Wish wish, double weight) {
        boolean asked =
                query.wishes().stream().anyMatch(each -> each.wish().getClass().equals(wish.getClass()));
        if (!asked) {
            wishes.add(new WeighedWish(wish, weight, false));
        }
    }

    /// What cannot be had at all is no substitute; enough of it is better than some.
    private void stock() {
        Demand demand = query.demand();
        if (demand.stockedOnly()) {
            if (demand.count() > 1) {
                wishes.add(new WeighedWish(new Wish.InStock(demand.count(), demand.size(), demand.by()), 3, false));
            }
            wishes.add(new WeighedWish(new Wish.InStock(1, demand.size(), demand.by()), 1, true));
            if (demand.count() == 1) {
                wishes.add(new WeighedWish(new Wish.InStock(PLENTY, demand.size(), demand.by()), 0.75, false));
            }
        }
    }

    private void uses() {
        role.use().ifPresent(use -> add(new Wish.ServesAs(use), 3));
        List<Use> others = role.uses().stream()
                .filter(use -> role.use().isEmpty() || !role.use().get().equals(use))
                .sorted()
                .limit(4)
                .toList();
        double share = role.use().isPresent() ? 0.5 : 1.0;
        for (Use use : others) {
            boolean ground = use == Use.GROUNDCOVER && role.use().isEmpty();
            wishes.add(
                    new WeighedWish(new Wish.ServesAs(use), ground ? 2 : Math.max(0.1, share / others.size()), false));
        }
    }

    private void seasons() {
        for (Role.Look look : role.looks()) {
            Season season = look.season();
            double weight = Math.max(0.4, SEASONS * look.share());
            Optional<ColorFamily> color = facts.value(colors(season)).orElse(List.of()).stream()
                    .findFirst()
                    .map(PlantColor::family);
            // for showing at all, for the time, and for the color: another color is nearer than nothing
            show(new Wish.Shows(season, Optional.empty(), Optional.empty()), weight / 2);
            if (season == Season.FLOWER) {
                facts.value(Attributes.BLOOM)
                        .filter(months -> !months.isEmpty())
                        .ifPresent(months ->
                                show(new Wish.Shows(season, Optional.of(months), Optional.empty()), weight / 4));
            }
            if (color.isPresent()) {
                show(
                        new Wish.Shows(season, Optional.empty(), color),
                        season == Season.FLOWER ? weight / 4 : weight / 2);
            }
        }
    }

    private void show(Wish wish, double weight) {
        wishes.add(new WeighedWish(wish, weight, false));
    }

    static Attribute<List<PlantColor>> colors(Season season) {
        return switch (season) {
            case FLOWER -> Attributes.FLOWER_COLOR;
            case FOLIAGE -> Attributes.FOLIAGE_COLOR;
            case FALL_COLOR -> Attributes.FALL_COLOR;
            case FRUIT -> Attributes.FRUIT_COLOR;
            case STEM -> Attributes.STEM_COLOR;
        };
    }

    private void kind() {
        Optional<Foliage> foliage = facts.value(Attributes.FOLIAGE);
        boolean evergreen = foliage.map(known -> known == Foliage.EVERGREEN || known == Foliage.SEMI_EVERGREEN)
                .orElse(false);
        facts.value(Attributes.LIFE_FORM).ifPresent(forms -> add(new Wish.OfForm(forms(forms, evergreen)), 2));
        if (evergreen) {
            add(new Wish.OfFoliage(Set.of(Foliage.EVERGREEN)), role.coversGround() ? 1 : 2);
        } else {
            foliage.ifPresent(known -> add(new Wish.OfFoliage(Set.of(known)), 0.5));
        }
        facts.value(Attributes.HABIT).ifPresent(habit -> add(new Wish.OfHabit(habit), 0.3));
    }

    /// The kinds of plant that can do the work: what covers the ground may be of any low kind, and needles
    /// serve where leaves do all year.
    private Set<LifeForm> forms(Set<LifeForm> own, boolean evergreen) {
        EnumSet<LifeForm> forms = EnumSet.copyOf(own);
        if (role.coversGround()
                && (own.contains(LifeForm.GROUNDCOVER) || role.use().isPresent())) {
            forms.addAll(List.of(LifeForm.GROUNDCOVER, LifeForm.PERENNIAL, LifeForm.FERN, LifeForm.GRASS));
        }
        if (evergreen && (own.contains(LifeForm.SHRUB) || own.contains(LifeForm.TREE))) {
            forms.add(LifeForm.CONIFER);
        }
        if (own.contains(LifeForm.CONIFER)) {
            boolean tall = facts.value(Attributes.HEIGHT)
                    .map(height -> height.middleCm() > 450)
                    .orElse(true);
            forms.add(tall ? LifeForm.TREE : LifeForm.SHRUB);
        }
        return forms;
    }

    private void size() {
        boolean climber = facts.value(Attributes.LIFE_FORM).orElse(Set.of()).contains(LifeForm.VINE);
        if (climber && role.coversGround()) {
            add(new Wish.NoTallerThan(LYING_CM), 1.5);
            return;
        }
        facts.value(Attributes.HEIGHT).ifPresent(height -> {
            // a plant that outgrows its place is worse than one that stays lower; a little off is better than far off
            addSize(new Wish.NoTallerThan(step(height.highCm() * TALLER)), 1.25);
            addSize(new Wish.NoTallerThan(step(height.highCm() * MUCH_TALLER)), 0.75);
            addSize(new Wish.AtLeastTall(step(height.middleCm() * LOWER)), 0.4);
            addSize(new Wish.AtLeastTall(step(height.middleCm() * MUCH_LOWER)), 0.6);
        });
        Optional<LengthRange> spread = facts.value(Attributes.SPREAD);
        if (spread.isPresent() && !role.coversGround() && !climber) {
            addSize(new Wish.NoWiderThan(step(spread.get().highCm() * TALLER * TALLER)), 0.5);
            addSize(new Wish.AtLeastWide(step(spread.get().middleCm() * MUCH_LOWER)), 0.5);
        }
    }

    /// A size may be asked for in two steps; the customer's own wish takes the place of both.
    private void addSize(Wish wish, double weight) {
        add(wish, weight);
    }

    private static int step(double cm) {
        return Math.max(1, (int) Math.round(Math.exp(Math.round(Math.log(cm) * STEPS) / STEPS)));
    }

    private void relatives() {
        String genus = query.original().name().genus();
        if (query.wishes().stream().anyMatch(wish -> wish.wish().equals(new Wish.NotOfGenus(genus)))) {
            return;
        }
        query.original()
                .name()
                .species()
                .ifPresent(species -> wishes.add(new WeighedWish(new Wish.OfSpecies(genus, species.text()), 2, false)));
        wishes.add(new WeighedWish(new Wish.OfGenus(genus), 1, false));
    }

    private void site() {
        boolean zoned = query.wishes().stream().anyMatch(wish -> wish.wish() instanceof Wish.HardyIn);
        if (!zoned) {
            facts.value(Attributes.HARDINESS).ifPresent(range -> add(new Wish.HardyIn(middle(range)), 0.5));
        }
        boolean lit = query.wishes().stream().anyMatch(wish -> wish.wish() instanceof Wish.GrowsIn);
        if (!lit) {
            Set<Exposure> light = facts.value(Attributes.EXPOSURE).orElse(Set.of());
            light.stream()
                    .sorted()
                    .forEach(one -> wishes.add(new WeighedWish(
                            new Wish.GrowsIn(one), one == Exposure.FULL_SHADE ? EXTREME : USUAL, false)));
        }
        boolean soiled = query.wishes().stream().anyMatch(wish -> wish.wish() instanceof Wish.LikesSoil);
        if (!soiled) {
            Set<Moisture> soil = facts.value(Attributes.MOISTURE).orElse(Set.of());
            soil.stream()
                    .sorted()
                    .forEach(one -> wishes.add(new WeighedWish(
                            new Wish.LikesSoil(one), one == Moisture.WET && soil.size() < 3 ? EXTREME : USUAL, false)));
        }
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
            add(new Wish.Bears(Wish.Stress.DROUGHT), 0.5);
        }
        if (facts.value(Attributes.DEER)
                .map(known -> known.compareTo(DamageRating.SELDOM) <= 0)
                .orElse(false)) {
            add(new Wish.LeftAloneBy(Wish.Browser.DEER), 0.5);
        }
        for (var creature : Hazards.concerning(facts)) {
            add(new Wish.SafeFor(creature), 0.5);
        }
    }
}
