package org.benchleaf.search.need;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
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
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.StockSize;

/// One wish in the short form of the word files: its kind, a blank, its value. `light full shade`, `zone 6a`,
/// `shows flower / white / Jun`, `stock 40 / #3 / 2027-W15`; parts that are not asked stay empty.
final class WishExpression {
    private WishExpression() {}

    /// @throws IllegalArgumentException when it is no wish
    static Wish read(String text) {
        int blank = text.indexOf(' ');
        String kind = blank < 0 ? text : text.substring(0, blank);
        String value = blank < 0 ? "" : text.substring(blank + 1).strip();
        return switch (kind) {
            case "zone" -> new Wish.HardyIn(HardinessZone.read(value).orThrow());
            case "heat" -> new Wish.BearsHeat(Integer.parseInt(value));
            case "ph" -> new Wish.GrowsAtPh((int) Math.round(Double.parseDouble(value) * 10));
            case "light" -> new Wish.GrowsIn(one(Exposure.class, value));
            case "soil" -> new Wish.LikesSoil(one(Moisture.class, value));
            case "texture" -> new Wish.LikesTexture(one(SoilTexture.class, value));
            case "water" -> new Wish.NeedsAtMost(one(WaterNeed.class, value));
            case "grows" -> new Wish.GrowsAtLeast(one(GrowthRate.class, value));
            case "bears" -> new Wish.Bears(Wish.Stress.valueOf(constant(value)));
            case "alone" -> new Wish.LeftAloneBy(Wish.Browser.valueOf(constant(value)));
            case "height<" -> new Wish.NoTallerThan(cm(value));
            case "height>" -> new Wish.AtLeastTall(cm(value));
            case "spread<" -> new Wish.NoWiderThan(cm(value));
            case "spread>" -> new Wish.AtLeastWide(cm(value));
            case "ten-height<" -> new Wish.AtTenYears(Wish.Bound.NO_TALLER, cm(value));
            case "ten-height>" -> new Wish.AtTenYears(Wish.Bound.AT_LEAST_TALL, cm(value));
            case "ten-spread<" -> new Wish.AtTenYears(Wish.Bound.NO_WIDER, cm(value));
            case "ten-spread>" -> new Wish.AtTenYears(Wish.Bound.AT_LEAST_WIDE, cm(value));
            case "form" -> new Wish.OfForm(set(LifeForm.class, value));
            case "foliage" -> new Wish.OfFoliage(set(Foliage.class, value));
            case "habit" -> new Wish.OfHabit(one(Habit.class, value));
            case "shows" -> shows(value);
            case "in-winter" -> new Wish.ShowsInWinter();
            case "fragrant" -> new Wish.Fragrant();
            case "feeds" -> new Wish.Feeds(one(Wildlife.class, value));
            case "native" ->
                new Wish.NativeTo(present(value).map(place -> Region.read(place).orThrow()));
            case "serves" -> new Wish.ServesAs(one(Use.class, value));
            case "safe" -> new Wish.SafeFor(one(Creature.class, value));
            case "genus" -> new Wish.OfGenus(value);
            case "not-genus" -> new Wish.NotOfGenus(value);
            case "family" -> new Wish.OfFamily(value);
            case "not-family" -> new Wish.NotOfFamily(value);
            case "free-of" -> new Wish.FreeOf(Wish.Right.valueOf(constant(value)));
            case "species" -> new Wish.OfSpecies(genus(value), epithet(value));
            case "not-species" -> new Wish.NotOfSpecies(genus(value), epithet(value));
            case "sex" -> new Wish.OfSex(one(Sex.class, value));
            case "fruits-alone" -> new Wish.FruitsAlone();
            case "stock" -> stock(value);
            case "price" -> new Wish.AtMostPrice(Money.usDollars(value));
            default -> throw new IllegalArgumentException("not a wish: " + text);
        };
    }

    private static Wish shows(String value) {
        List<String> parts = parts(value);
        return new Wish.Shows(
                one(Season.class, parts.get(0)),
                part(parts, 2).map(months -> MonthSet.read(months).orThrow()),
                part(parts, 1).map(color -> one(ColorFamily.class, color)));
    }

    private static Wish stock(String value) {
        List<String> parts = parts(value);
        return new Wish.InStock(
                Integer.parseInt(parts.get(0)),
                part(parts, 1).map(size -> StockSize.read(size).orThrow()),
                part(parts, 2).map(week -> YearWeek.read(week).orThrow()));
    }

    private static List<String> parts(String value) {
        return Arrays.stream(value.split("/")).map(String::strip).toList();
    }

    private static Optional<String> part(List<String> parts, int at) {
        return parts.stream().skip(at).findFirst().flatMap(WishExpression::present);
    }

    private static Optional<String> present(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static String genus(String species) {
        return species.substring(0, species.indexOf(' '));
    }

    private static String epithet(String species) {
        return species.substring(species.indexOf(' ') + 1);
    }

    private static int cm(String length) {
        return LengthRange.read(length).orThrow().highCm();
    }

    private static <E extends Enum<E> & Term> E one(Class<E> vocabulary, String value) {
        return Term.read(vocabulary, value).orThrow();
    }

    private static <E extends Enum<E> & Term> Set<E> set(Class<E> vocabulary, String value) {
        return Term.readSet(vocabulary, value).orThrow();
    }

    private static String constant(String value) {
        return value.toUpperCase(Locale.ROOT).replace(' ', '_');
    }
}
