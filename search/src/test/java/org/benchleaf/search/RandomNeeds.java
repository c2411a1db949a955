package org.benchleaf.search;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Counting;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.StockSize;

/// Needs at random, the same for the same seed, of every kind of wish.
public final class RandomNeeds {
    private static final double[] WEIGHTS = {1, 1, 1, 0.5, 2, 0.37};

    private final Random random;

    public RandomNeeds(long seed) {
        random = new Random(seed);
    }

    /// A need of none to seven wishes.
    public Need need() {
        List<WeighedWish> wishes = new ArrayList<>();
        int count = random.nextInt(8);
        for (int i = 0; i < count; i++) {
            Wish wish = wish();
            WeighedWish usual = WeighedWish.of(wish);
            boolean fixed = usual.fixed() && random.nextBoolean();
            wishes.add(new WeighedWish(
                    wish,
                    WEIGHTS[random.nextInt(WEIGHTS.length)],
                    fixed,
                    !fixed && random.nextInt(4) == 0 ? Counting.BY_DEGREE : Counting.WHOLE));
        }
        return new Need(wishes);
    }

    public Wish wish() {
        return switch (random.nextInt(36)) {
            case 0 -> new Wish.HardyIn(new HardinessZone(6 + random.nextInt(10)));
            case 1 -> new Wish.GrowsIn(pick(Exposure.values()));
            case 2 -> new Wish.LikesSoil(pick(Moisture.values()));
            case 3 -> new Wish.LikesTexture(pick(SoilTexture.values()));
            case 4 -> new Wish.Bears(pick(Wish.Stress.values()));
            case 5 -> new Wish.LeftAloneBy(pick(Wish.Browser.values()));
            case 6 -> new Wish.NoTallerThan(30 + random.nextInt(300));
            case 7 -> new Wish.AtLeastTall(30 + random.nextInt(300));
            case 8 -> new Wish.NoWiderThan(30 + random.nextInt(300));
            case 9 -> new Wish.OfForm(Set.of(pick(LifeForm.values())));
            case 10 -> new Wish.OfFoliage(Set.of(pick(Foliage.values())));
            case 11 -> new Wish.OfHabit(pick(Habit.values()));
            case 12 -> new Wish.Fragrant();
            case 13 -> new Wish.Feeds(pick(Wildlife.values()));
            case 14 -> new Wish.NativeTo(maybe(new Region("US-PA")));
            case 15 -> new Wish.ServesAs(pick(Use.values()));
            case 16 -> new Wish.SafeFor(pick(Creature.values()));
            case 17 -> random.nextBoolean() ? new Wish.NotOfGenus("Buxus") : new Wish.OfGenus("Acer");
            case 18 -> new Wish.AtMostPrice(Money.usDollars(5 + random.nextInt(60) + ".00"));
            case 19 ->
                new Wish.InStock(
                        1 + random.nextInt(60),
                        maybe(StockSize.read("#3").orThrow()),
                        maybe(new YearWeek(2027, 1 + random.nextInt(30))));
            case 20 -> new Wish.BearsHeat(1 + random.nextInt(12));
            case 21 -> new Wish.GrowsAtPh(45 + random.nextInt(40));
            case 22 -> new Wish.NeedsAtMost(pick(WaterNeed.values()));
            case 23 -> new Wish.GrowsAtLeast(pick(GrowthRate.values()));
            case 24 -> new Wish.AtLeastWide(30 + random.nextInt(300));
            case 25 -> new Wish.AtTenYears(pick(Wish.Bound.values()), 30 + random.nextInt(300));
            case 26 ->
                random.nextBoolean() ? new Wish.OfSpecies("Acer", "rubra") : new Wish.NotOfSpecies("Buxus", "alba");
            case 27 -> random.nextBoolean() ? new Wish.FruitsAlone() : new Wish.OfSex(pick(Sex.values()));
            case 28 -> shipTo();
            case 29 -> random.nextBoolean() ? new Wish.OfFamily("Rosaceae") : new Wish.NotOfFamily("Rosaceae");
            case 33 -> new Wish.ShowsInWinter();
            case 34 ->
                Lists.namedInstead(
                        "Ilex",
                        // few names, and more than are told apart one by one
                        random.nextBoolean()
                                ? Map.of("Acer rubra", 2, "Buxus alba", 1)
                                : Map.of("Acer", 1, "Acer rubra", 3, "Cornus", 2, "Itea", 5, "Buxus alba", 1));
            case 30 -> new Wish.FreeOf(pick(Wish.Right.values()));
            default -> new Wish.Shows(pick(Season.values()), maybe(months()), maybe(pick(ColorFamily.values())));
        };
    }

    private Wish shipTo() {
        String[] places = {"PA", "NY", "NY / Suffolk", "MA", "WY"};
        Shipment shipment =
                Shipment.to(Destination.read(pick(places)).orThrow(), LocalDate.of(2026 + random.nextInt(3), 6, 1));
        return new Wish.ShipTo(
                random.nextBoolean()
                        ? shipment
                        : shipment.from(Destination.read("PA").orThrow()));
    }

    private MonthSet months() {
        Month from = Month.of(1 + random.nextInt(12));
        return MonthSet.between(from, from.plus(random.nextInt(3)));
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private <T> T pick(T[] from) {
        return from[random.nextInt(from.length)];
    }
}
