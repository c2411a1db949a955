package org.benchleaf.search.need;

import java.util.stream.Collectors;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// Wishes in the short form of the word files, so that a table of sentences can be read by people.
final class WishText {
    private WishText() {}

    static String of(NeedReading reading) {
        String wishes = reading.need().wishes().stream().map(WishText::of).collect(Collectors.joining(" + "));
        return reading.notUnderstood().isEmpty()
                ? wishes
                : wishes + " ?? " + String.join(", ", reading.notUnderstood());
    }

    private static String of(WeighedWish weighed) {
        String weight = weighed.weight() == 1 ? "" : " *" + weighed.weight();
        String fixed =
                weighed.fixed() == WeighedWish.isUsuallyFixed(weighed.wish()) ? "" : weighed.fixed() ? " !" : " ~";
        return of(weighed.wish()) + weight + fixed;
    }

    private static String of(Wish wish) {
        return switch (wish) {
            case Wish.HardyIn(var zone) -> "zone " + zone;
            case Wish.BearsHeat(int zone) -> "heat " + zone;
            case Wish.GrowsIn(var light) -> "light " + light.term();
            case Wish.LikesSoil(var moisture) -> "soil " + moisture.term();
            case Wish.LikesTexture(var texture) -> "texture " + texture.term();
            case Wish.GrowsAtPh(int tenths) -> "ph " + tenths / 10.0;
            case Wish.NeedsAtMost(var water) -> "water " + water.term();
            case Wish.GrowsAtLeast(var rate) -> "grows " + rate.term();
            case Wish.Bears(var stress) ->
                "bears " + stress.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            case Wish.LeftAloneBy(var browser) -> "alone " + browser.name().toLowerCase(java.util.Locale.ROOT);
            case Wish.NoTallerThan(int cm) -> "height< " + cm;
            case Wish.AtLeastTall(int cm) -> "height> " + cm;
            case Wish.NoWiderThan(int cm) -> "spread< " + cm;
            case Wish.AtLeastWide(int cm) -> "spread> " + cm;
            case Wish.AtTenYears(var bound, int cm) -> "ten years " + bound.name() + " " + cm;
            case Wish.OfForm(var forms) ->
                "form " + forms.stream().sorted().map(Term::term).collect(Collectors.joining(", "));
            case Wish.OfFoliage(var foliage) ->
                "foliage " + foliage.stream().sorted().map(Term::term).collect(Collectors.joining(", "));
            case Wish.OfHabit(var habit) -> "habit " + habit.term();
            case Wish.Shows(var season, var months, var color) ->
                "shows " + season.term() + color.map(c -> " / " + c.term()).orElse("")
                        + months.map(m -> " / " + m).orElse("");
            case Wish.ShowsInWinter() -> "in-winter";
            case Wish.Fragrant() -> "fragrant";
            case Wish.Feeds(var wildlife) -> "feeds " + wildlife.term();
            case Wish.NativeTo(var region) ->
                "native" + region.map(r -> " " + r.code()).orElse("");
            case Wish.ServesAs(var use) -> "serves " + use.term();
            case Wish.SafeFor(var creature) -> "safe " + creature.term();
            case Wish.OfFamily(var family) -> "family " + family;
            case Wish.NotOfFamily(var family) -> "not-family " + family;
            case Wish.FreeOf(var right) -> "free-of " + right.name().toLowerCase(java.util.Locale.ROOT);
            case Wish.NotOfGenus(var genus) -> "not-genus " + genus;
            case Wish.OfGenus(var genus) -> "genus " + genus;
            case Wish.OfSpecies(var genus, var epithet) -> "species " + genus + " " + epithet;
            case Wish.NotOfSpecies(var genus, var epithet) -> "not-species " + genus + " " + epithet;
            case Wish.NamedInstead(var original, var named) -> "named instead of " + original;
            case Wish.OfSex(var sex) -> "sex " + sex.term();
            case Wish.FruitsAlone() -> "fruits-alone";
            case Wish.ShipTo ship -> "ship " + ship;
            case Wish.InStock(int count, var size, var by) ->
                "stock " + count + size.map(s -> " / " + s).orElse("")
                        + by.map(w -> " / " + w).orElse("");
            case Wish.AtMostPrice(var price) -> "price " + price.amount();
        };
    }
}
