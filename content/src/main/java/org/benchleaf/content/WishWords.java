package org.benchleaf.content;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;

/// Wishes and reasons in words.
final class WishWords {
    private final Wording words;

    WishWords(Wording words) {
        this.words = words;
    }

    String wish(Wish wish) {
        return words.text("wish." + variant(wish), values(wish));
    }

    String reason(Reason reason) {
        Wish wish = reason.wish();
        if (wish instanceof Wish.ShipTo(var shipment)) {
            return new SaleWords(words).reason(reason, shipment);
        }
        String kind = wish.getClass().getSimpleName();
        Map<String, String> values = new HashMap<>(values(wish));
        if (isKept(wish)) {
            return switch (reason) {
                case Reason.Met met -> words.text("met." + kind + ".kept", values);
                case Reason.Missed missed -> words.text("missed." + kind + ".kept", values);
                case Reason.Unknown unknown -> words.text("unknown." + kind, values);
            };
        }
        return switch (reason) {
            case Reason.Met(Wish of, Reason.Seen seen, boolean knownFor) -> {
                values.put("seen", new SeenWords(words).of(of, seen.value()));
                if (of instanceof Wish.NamedInstead) {
                    values.put("n", seen.value());
                }
                String met = inherited(seen, words.text("met." + kind, values));
                yield knownFor ? words.text("seen.known-for", Map.of("reason", met)) : met;
            }
            case Reason.Missed(Wish of, Reason.Seen seen, Reason.Shortfall by) -> {
                values.put("seen", new SeenWords(words).of(of, seen.value()));
                values.put("short", shortfall(of, by));
                yield inherited(seen, words.text("missed." + kind, values));
            }
            case Reason.Unknown unknown -> words.text("unknown." + kind, values);
        };
    }

    /// Whether the reason would tell what the shop does not.
    private boolean isKept(Wish wish) {
        return switch (wish) {
            case Wish.InStock stock -> !words.telling().isExact();
            case Wish.AtMostPrice price -> !words.telling().prices();
            default -> false;
        };
    }

    private String inherited(Reason.Seen seen, String reason) {
        return seen.inherited() ? words.text("seen.inherited", Map.of("reason", reason)) : reason;
    }

    /// The key of a wish, longer when more is asked.
    private static String variant(Wish wish) {
        return switch (wish) {
            case Wish.InStock stock ->
                "InStock" + (stock.size().isPresent() ? ".size" : "")
                        + (stock.by().isPresent() ? ".by" : "");
            case Wish.Shows shows ->
                "Shows" + (shows.color().isPresent() ? ".color" : "")
                        + (shows.months().isPresent() ? ".months" : "");
            case Wish.NativeTo nativeTo -> "NativeTo" + (nativeTo.region().isPresent() ? ".region" : "");
            default -> wish.getClass().getSimpleName();
        };
    }

    private Map<String, String> values(Wish wish) {
        return switch (wish) {
            case Wish.HardyIn(var zone) -> Map.of("zone", zone.toString());
            case Wish.BearsHeat(int zone) -> Map.of("zone", Integer.toString(zone));
            case Wish.GrowsIn(var exposure) -> Map.of("exposure", words.term(exposure));
            case Wish.LikesSoil(var moisture) -> Map.of("moisture", words.term(moisture));
            case Wish.LikesTexture(var texture) -> Map.of("texture", words.term(texture));
            case Wish.GrowsAtPh(int tenths) -> Map.of("ph", ph(tenths));
            case Wish.NeedsAtMost(var water) -> Map.of("water", words.term(water));
            case Wish.GrowsAtLeast(var rate) -> Map.of("rate", words.term(rate));
            case Wish.Bears(var stress) -> Map.of("stress", words.term(stress));
            case Wish.LeftAloneBy(var browser) -> Map.of("animal", words.term(browser));
            case Wish.NoTallerThan(int cm) -> Map.of("length", length(cm));
            case Wish.AtLeastTall(int cm) -> Map.of("length", length(cm));
            case Wish.NoWiderThan(int cm) -> Map.of("length", length(cm));
            case Wish.AtLeastWide(int cm) -> Map.of("length", length(cm));
            case Wish.AtTenYears(var bound, int cm) -> Map.of("bound", words.term(bound), "length", length(cm));
            case Wish.OfForm(var forms) -> Map.of("forms", words.terms(forms));
            case Wish.OfFoliage(var foliage) -> Map.of("foliage", words.terms(foliage));
            case Wish.OfHabit(var habit) -> Map.of("habit", words.term(habit));
            case Wish.Shows shows -> {
                Map<String, String> values = new HashMap<>(Map.of("season", words.term(shows.season())));
                shows.months().ifPresent(months -> values.put("months", words.months(months)));
                shows.color().ifPresent(color -> values.put("color", words.term(color)));
                yield values;
            }
            case Wish.ShowsInWinter() -> Map.of();
            case Wish.Fragrant() -> Map.of();
            case Wish.Feeds(var wildlife) -> Map.of("what", words.term(wildlife));
            case Wish.NativeTo(var region) ->
                region.map(place -> Map.of("region", place.name())).orElseGet(Map::of);
            case Wish.ServesAs(var use) -> Map.of("use", words.term(use));
            case Wish.SafeFor(var creature) -> Map.of("creature", words.term(creature));
            case Wish.ShipTo(var shipment) ->
                Map.of(
                        "place", new SaleWords(words).place(shipment.to()),
                        "date", words.date(shipment.on()));
            case Wish.OfFamily(var family) -> Map.of("family", family);
            case Wish.NotOfFamily(var family) -> Map.of("family", family);
            case Wish.FreeOf(var right) -> Map.of("right", words.term(right));
            case Wish.NotOfGenus(var genus) -> Map.of("genus", genus);
            case Wish.OfGenus(var genus) -> Map.of("genus", genus);
            case Wish.OfSpecies(var genus, var epithet) -> Map.of("species", genus + " " + epithet);
            case Wish.NotOfSpecies(var genus, var epithet) -> Map.of("species", genus + " " + epithet);
            case Wish.NamedInstead(var original, var named) -> Map.of("original", original.text());
            case Wish.OfSex(var sex) -> Map.of("sex", words.term(sex));
            case Wish.FruitsAlone() -> Map.of();
            case Wish.InStock stock -> {
                Map<String, String> values = new HashMap<>(Map.of("count", words.count(stock.count())));
                stock.size().ifPresent(size -> values.put("size", words.size(size)));
                stock.by().ifPresent(week -> values.put("week", words.week(week)));
                yield values;
            }
            case Wish.AtMostPrice(var price) ->
                Map.of(
                        "price",
                        words.money(words.telling()
                                .tier()
                                .map(tier -> tier.told(price))
                                .orElse(price)));
        };
    }

    private static String ph(int tenths) {
        return tenths / 10 + "." + tenths % 10;
    }

    private String length(int cm) {
        return words.length(new LengthRange(Math.max(1, cm), Math.max(1, cm)));
    }

    private String shortfall(Wish wish, Reason.Shortfall by) {
        return switch (by) {
            case Reason.Shortfall.Centimetres(int cm) ->
                words.text(
                        cm < 0 ? "short.Centimetres.under" : "short.Centimetres.over",
                        Map.of("length", length(Math.abs(cm))));
            case Reason.Shortfall.HalfZones(int halves) ->
                counted(halves < 0 ? "short.HalfZones.cold" : "short.HalfZones.warm", Math.abs(halves));
            case Reason.Shortfall.Steps(int steps) -> counted("short.Steps", steps);
            case Reason.Shortfall.PhTenths(int tenths) ->
                words.text(
                        tenths < 0 ? "short.PhTenths.sour" : "short.PhTenths.sweet",
                        Map.of("ph", ph(Math.abs(tenths))));
            case Reason.Shortfall.Months(int months) -> counted("short.Months", months);
            case Reason.Shortfall.OtherColor(double difference) -> words.text("short.OtherColor");
            case Reason.Shortfall.TooFew(int missing) -> words.text("short.TooFew", Map.of("n", words.count(missing)));
            case Reason.Shortfall.TooDear(long minor) ->
                words.text("short.TooDear", Map.of("money", money(wish, minor)));
            case Reason.Shortfall.NotSo() -> words.text("short.NotSo");
        };
    }

    private String money(Wish wish, long minor) {
        return wish instanceof Wish.AtMostPrice(Money price)
                ? words.money(own(new Money(minor, price.currency())))
                : Long.toString(minor);
    }

    private Money own(Money price) {
        return words.telling().price(price).orElse(price);
    }

    private String counted(String key, int n) {
        return words.text(key + (n == 1 ? ".one" : ".many"), Map.of("n", words.count(n)));
    }

    /// Every key that wishes and reasons can ask for, for the test that no word is missing and none is idle.
    static List<String> keys() {
        List<String> keys = new java.util.ArrayList<>();
        for (Class<?> wish : Wish.class.getPermittedSubclasses()) {
            for (String start : List.of("wish.", "met.", "missed.", "unknown.")) {
                keys.add(start + wish.getSimpleName());
            }
        }
        for (String more : List.of("InStock.size", "InStock.by", "InStock.size.by", "NativeTo.region")) {
            keys.add("wish." + more);
        }
        for (String more : List.of("Shows.color", "Shows.months", "Shows.color.months")) {
            keys.add("wish." + more);
        }
        for (String kept : List.of("InStock.kept", "AtMostPrice.kept")) {
            keys.addAll(List.of("met." + kept, "missed." + kept));
        }
        keys.addAll(List.of("seen.regions.one", "seen.regions.many", "seen.in-winter"));
        return keys;
    }
}
