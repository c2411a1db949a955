package org.benchleaf.search.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.plant.SelfFertility;
import org.benchleaf.shared.site.DamageRating;

/// Judges one plant against a customer's wishes and says why, one reason a wish, in the order asked.
///
/// The index proposes; this class alone decides and explains, so that screen, sheet and test never disagree. A
/// fact that the catalog lacks is a reason of its own. It holds no state and may be shared between threads.
public final class FitJudge {
    /// Sizes in lists are approximate: an overshoot up to this share is still met. Ours, no source.
    private static final double ABOUT = 0.05;

    /// The fit of any plant, answer or not: "why not this one?".
    public Fit fit(Need need, PlantRecord plant, PlantStock stock, YearWeek now) {
        return fit(need, new Candidate(plant, stock), Occasion.of(need, now));
    }

    /// The fits of several plants, in their order. Two threads are no faster for a screen of them, measured on two
    /// cores.
    public List<Fit> fits(Need need, List<Candidate> candidates, YearWeek now) {
        Occasion occasion = Occasion.of(need, now);
        return candidates.stream()
                .map(candidate -> fit(need, candidate, occasion))
                .toList();
    }

    private Fit fit(Need need, Candidate candidate, Occasion occasion) {
        PlantRecord plant = candidate.plant();
        PlantStock stock = candidate.stock();
        List<Reason> reasons = new ArrayList<>();
        boolean answers = true;
        int met = 0;
        int near = 0;
        for (WeighedWish weighed : need.wishes()) {
            Reason reason = judge(weighed.wish(), plant.facts(), plant.name(), stock, occasion);
            int outcome = Outcome.of(reason, plant.facts());
            reasons.add(known(reason, plant.facts()));
            answers &= !(weighed.fixed() && Outcome.isMissed(outcome));
            met += Outcome.met(outcome, weighed);
            near += Outcome.near(outcome, weighed);
        }
        return new Fit(
                plant.key(),
                reasons,
                answers,
                met,
                near + Merit.nearness(candidate.merit()),
                StockJudge.standing(stock, occasion.now()),
                candidate.merit(),
                candidate.order());
    }

    private static Reason known(Reason reason, Facts facts) {
        return reason instanceof Reason.Met(Wish wish, Reason.Seen seen, boolean said) && Renown.isKnown(wish, facts)
                ? new Reason.Met(wish, seen, true)
                : reason;
    }

    /// One wish, judged by what is known of a plant.
    ///
    /// @param facts the chosen facts, own and inherited
    /// @param occasion when, how many and in which size
    public Reason judge(Wish wish, Facts facts, BotanicalName name, PlantStock stock, Occasion occasion) {
        return switch (wish) {
            case Wish.HardyIn hardy -> HardinessJudge.judge(hardy, facts);
            case Wish.BearsHeat(int zone) -> when(wish, facts.fact(Attributes.HEAT_ZONE), range -> heat(range, zone));
            case Wish.GrowsIn(var light) -> nearest(wish, facts.fact(Attributes.EXPOSURE), light);
            case Wish.LikesSoil(var moisture) -> nearest(wish, facts.fact(Attributes.MOISTURE), moisture);
            case Wish.LikesTexture(var texture) -> nearest(wish, facts.fact(Attributes.SOIL_TEXTURE), texture);
            case Wish.GrowsAtPh(int tenths) ->
                when(wish, facts.fact(Attributes.SOIL_PH), range -> acidity(range, tenths));
            case Wish.NeedsAtMost(var water) ->
                when(wish, facts.fact(Attributes.WATER_NEED), need -> steps(need.ordinal() - water.ordinal()));
            case Wish.GrowsAtLeast(var rate) ->
                when(wish, facts.fact(Attributes.GROWTH_RATE), known -> steps(rate.ordinal() - known.ordinal()));
            case Wish.Bears bears -> StressJudge.judge(bears, facts);
            case Wish.LeftAloneBy(var browser) ->
                when(
                        wish,
                        facts.fact(browser == Wish.Browser.DEER ? Attributes.DEER : Attributes.RABBIT),
                        rating -> steps(rating.ordinal() - DamageRating.SELDOM.ordinal()));
            case Wish.NoTallerThan(int cm) -> when(wish, facts.fact(Attributes.HEIGHT), height -> over(height, cm));
            case Wish.AtLeastTall(int cm) -> when(wish, facts.fact(Attributes.HEIGHT), height -> under(height, cm));
            case Wish.NoWiderThan(int cm) -> when(wish, facts.fact(Attributes.SPREAD), spread -> over(spread, cm));
            case Wish.AtLeastWide(int cm) -> when(wish, facts.fact(Attributes.SPREAD), spread -> under(spread, cm));
            case Wish.AtTenYears(var bound, int cm) -> atTenYears(wish, facts, bound, cm);
            case Wish.OfForm(var forms) ->
                when(
                        wish,
                        facts.fact(Attributes.LIFE_FORM),
                        known -> so(known.stream().anyMatch(forms::contains)));
            case Wish.OfFoliage(var asked) ->
                when(wish, facts.fact(Attributes.FOLIAGE), known -> foliage(known, asked));
            case Wish.OfHabit(var habit) -> when(wish, facts.fact(Attributes.HABIT), known -> so(known == habit));
            case Wish.Shows shows -> SeasonJudge.judge(shows, facts);
            case Wish.ShowsInWinter winter -> WinterJudge.judge(winter, facts);
            case Wish.Fragrant() ->
                when(wish, facts.fact(Attributes.FRAGRANCE), fragrance -> so(fragrance != Fragrance.NONE));
            case Wish.Feeds(var wildlife) -> has(wish, facts, Attributes.WILDLIFE, wildlife);
            case Wish.NativeTo nativeTo -> OriginJudge.judge(nativeTo, facts);
            case Wish.ServesAs(var use) -> has(wish, facts, Attributes.USES, use);
            case Wish.SafeFor safe -> SafetyJudge.judge(safe, facts);
            case Wish.ShipTo ship -> ShippingJudge.judge(ship, facts);
            case Wish.OfFamily(var family) ->
                when(wish, facts.fact(Attributes.FAMILY), known -> so(known.equalsIgnoreCase(family)));
            case Wish.NotOfFamily(var family) ->
                when(wish, facts.fact(Attributes.FAMILY), known -> so(!known.equalsIgnoreCase(family)));
            case Wish.FreeOf free -> RightsJudge.judge(free, facts, name);
            case Wish.NotOfGenus(var genus) -> genus(wish, name, !name.genus().equals(genus));
            case Wish.OfGenus(var genus) -> genus(wish, name, name.genus().equals(genus));
            case Wish.OfSpecies(var genus, var epithet) -> species(wish, name, genus, epithet, true);
            case Wish.NotOfSpecies(var genus, var epithet) -> species(wish, name, genus, epithet, false);
            case Wish.NamedInstead named -> namedInstead(named, name);
            case Wish.OfSex(var sex) -> when(wish, facts.fact(Attributes.SEX), known -> so(known == sex));
            case Wish.FruitsAlone() -> when(wish, facts.fact(Attributes.SELF_FERTILE), FitJudge::fruitsAlone);
            case Wish.InStock inStock -> StockJudge.judge(inStock, stock, occasion);
            case Wish.AtMostPrice price -> StockJudge.judge(price, stock, occasion);
        };
    }

    /// Met when nothing falls short, unknown when the fact is not there.
    static <T> Reason when(Wish wish, Optional<Fact<T>> fact, Function<T, Optional<Shortfall>> shortfall) {
        if (fact.isEmpty()) {
            return new Reason.Unknown(wish);
        }
        Reason.Seen seen = seen(fact.get());
        return shortfall
                .apply(fact.get().value())
                .<Reason>map(by -> new Reason.Missed(wish, seen, by))
                .orElseGet(() -> new Reason.Met(wish, seen));
    }

    static Reason.Seen seen(Fact<?> fact) {
        return new Reason.Seen(fact.text(), Optional.of(fact.source()), fact.inherited());
    }

    static Optional<Shortfall> so(boolean holds) {
        return holds ? Optional.empty() : Optional.of(new Shortfall.NotSo());
    }

    static Optional<Shortfall> steps(int away) {
        return away <= 0 ? Optional.empty() : Optional.of(new Shortfall.Steps(away));
    }

    private static <T> Reason has(Wish wish, Facts facts, Attribute<Set<T>> attribute, T wanted) {
        return when(wish, facts.fact(attribute), known -> so(known.contains(wanted)));
    }

    /// Steps along the vocabulary to the nearest word known.
    private static <E extends Enum<E>> Reason nearest(Wish wish, Optional<Fact<Set<E>>> fact, E wanted) {
        return when(
                wish,
                fact,
                known -> steps(known.stream()
                        .mapToInt(word -> Math.abs(word.ordinal() - wanted.ordinal()))
                        .min()
                        .orElse(0)));
    }

    private static Optional<Shortfall> over(LengthRange size, int cm) {
        int over = size.highCm() - cm;
        return over <= cm * ABOUT ? Optional.empty() : Optional.of(new Shortfall.Centimetres(over));
    }

    /// A plant reaches a height when the middle of its span does.
    private static Optional<Shortfall> under(LengthRange size, int cm) {
        int under = cm - (int) Math.round(size.middleCm());
        return under <= cm * ABOUT ? Optional.empty() : Optional.of(new Shortfall.Centimetres(-under));
    }

    /// Half evergreen is one step from evergreen; everything else simply is not so.
    private static Optional<Shortfall> foliage(Foliage known, Set<Foliage> asked) {
        boolean near = known == Foliage.SEMI_EVERGREEN && asked.contains(Foliage.EVERGREEN);
        return asked.contains(known)
                ? Optional.empty()
                : Optional.of(near ? new Shortfall.Steps(1) : new Shortfall.NotSo());
    }

    private static Reason atTenYears(Wish wish, Facts facts, Wish.Bound bound, int cm) {
        return switch (bound) {
            case NO_TALLER -> when(wish, facts.fact(Attributes.HEIGHT_10YR), height -> over(height, cm));
            case AT_LEAST_TALL -> when(wish, facts.fact(Attributes.HEIGHT_10YR), height -> under(height, cm));
            case NO_WIDER -> when(wish, facts.fact(Attributes.SPREAD_10YR), spread -> over(spread, cm));
            case AT_LEAST_WIDE -> when(wish, facts.fact(Attributes.SPREAD_10YR), spread -> under(spread, cm));
        };
    }

    /// The heat of the site counts, not its cold: a plant that bears more heat than there is bears it.
    private static Optional<Shortfall> heat(HeatZoneRange range, int zone) {
        return steps(zone - range.high());
    }

    private static Optional<Shortfall> acidity(PhRange range, int tenths) {
        int outside =
                tenths < range.lowTenths() ? tenths - range.lowTenths() : Math.max(0, tenths - range.highTenths());
        return outside == 0 ? Optional.empty() : Optional.of(new Shortfall.PhTenths(outside));
    }

    private static Optional<Shortfall> fruitsAlone(SelfFertility known) {
        return switch (known) {
            case YES -> Optional.empty();
            case PARTLY -> steps(1);
            case NO -> so(false);
        };
    }

    /// A cultivar named under its genus alone may be of any of its species.
    private static Reason species(Wish wish, BotanicalName name, String genus, String epithet, boolean wanted) {
        boolean sameGenus = name.genus().equals(genus);
        if (sameGenus && name.species().isEmpty()) {
            return new Reason.Unknown(wish);
        }
        boolean same = sameGenus && name.species().orElseThrow().text().equals(epithet);
        Reason.Seen seen = Reason.Seen.own(
                name.genus() + name.species().map(known -> " " + known.text()).orElse(""));
        return same == wanted ? new Reason.Met(wish, seen) : new Reason.Missed(wish, seen, new Shortfall.NotSo());
    }

    private static Reason namedInstead(Wish.NamedInstead wish, BotanicalName name) {
        int publishers = wish.publishersOf(name);
        Reason.Seen seen = Reason.Seen.own(Integer.toString(publishers));
        return publishers > 0 ? new Reason.Met(wish, seen) : new Reason.Missed(wish, seen, new Shortfall.NotSo());
    }

    private static Reason genus(Wish wish, BotanicalName name, boolean met) {
        Reason.Seen seen = Reason.Seen.own(name.genus());
        return met ? new Reason.Met(wish, seen) : new Reason.Missed(wish, seen, new Shortfall.NotSo());
    }
}
