package org.benchleaf.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.SelfFertility;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Juglone;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.Tolerance;
import org.benchleaf.shared.site.WaterNeed;

/// A fact in its stored form, which is English, as people read it: lengths in their units, dashes for spans, words
/// of a vocabulary, months and colors in their language. What is free text stays as it was written.
final class SeenWords {
    /// Between facts that were looked at together, such as colors and their months.
    private static final String BETWEEN_FACTS = " · ";

    private final Wording words;

    SeenWords(Wording words) {
        this.words = words;
    }

    String of(Wish wish, String stored) {
        Optional<String> whole = switch (wish) {
            case Wish.NoTallerThan w -> length(stored);
            case Wish.AtLeastTall w -> length(stored);
            case Wish.AtLeastWide w -> length(stored);
            case Wish.AtTenYears w -> length(stored);
            case Wish.NoWiderThan w -> length(stored);
            case Wish.AtMostPrice(Money most) ->
                Money.read(stored, most.currency())
                        .toOptional()
                        .flatMap(words.telling()::price)
                        .map(words::money);
            case Wish.ShowsInWinter winter -> Optional.of(inWinter(stored));
            case Wish.NativeTo(var asked) -> Region.readSet(stored).toOptional().map(home -> home(asked, home));
            default -> Optional.empty();
        };
        return whole.orElseGet(() -> Stream.of(stored.split(BETWEEN_FACTS))
                .map(fact -> fact(wish, fact))
                .collect(Collectors.joining(BETWEEN_FACTS)));
    }

    /// `stem: red #9E2B2B · foliage: evergreen`: what is seen, and of what.
    private String inWinter(String stored) {
        return Stream.of(stored.split(BETWEEN_FACTS))
                .map(part -> part.split(": ", 2))
                .map(part -> words.text(
                        "seen.in-winter",
                        Map.of(
                                "season", term(Season.class, part[0]).orElse(part[0]),
                                "seen",
                                        fact(
                                                new Wish.Shows(Season.FLOWER, Optional.empty(), Optional.empty()),
                                                part[1]))))
                .collect(Collectors.joining(BETWEEN_FACTS));
    }

    private Optional<String> length(String stored) {
        return LengthRange.read(stored).toOptional().map(words::length);
    }

    private String fact(Wish wish, String stored) {
        Optional<String> months =
                wish instanceof Wish.Shows ? MonthSet.read(stored).toOptional().map(words::months) : Optional.empty();
        return months.orElseGet(() -> Stream.of(stored.strip().split("\\s*;\\s*"))
                .map(piece -> piece(wish, piece))
                .collect(Collectors.joining(words.text("list.comma"))));
    }

    private String piece(Wish wish, String piece) {
        Optional<String> color = wish instanceof Wish.Shows && piece.indexOf('#') > 0
                ? PlantColor.read(piece).toOptional().map(words::color)
                : Optional.empty();
        return color.or(() -> vocabularies(wish).stream()
                        .flatMap(vocabulary -> term(vocabulary, piece).stream())
                        .findFirst())
                .orElseGet(() -> piece.replaceAll("\\s*#[0-9A-Fa-f]{6}", "")
                        .replaceAll("(?<=\\d[ab]?|[A-Z][a-z]{2})-(?=\\d|[A-Z][a-z]{2})", "–"));
    }

    private Optional<String> term(Class<? extends Enum<?>> vocabulary, String piece) {
        return Stream.of(vocabulary.getEnumConstants())
                .filter(constant -> constant instanceof Term term && term.term().equals(piece))
                .map(words::term)
                .findFirst();
    }

    /// Whose words a fact may hold, the likeliest first: `medium` is another word of soil than of growth.
    private static List<Class<? extends Enum<?>>> vocabularies(Wish wish) {
        return switch (wish) {
            case Wish.GrowsIn w -> List.of(Exposure.class);
            case Wish.LikesSoil w -> List.of(Moisture.class);
            case Wish.LikesTexture w -> List.of(SoilTexture.class);
            case Wish.NeedsAtMost w -> List.of(WaterNeed.class);
            case Wish.GrowsAtLeast w -> List.of(GrowthRate.class);
            case Wish.Bears w -> List.of(Tolerance.class, Juglone.class, Moisture.class);
            case Wish.LeftAloneBy w -> List.of(DamageRating.class);
            case Wish.OfForm w -> List.of(LifeForm.class);
            case Wish.OfHabit w -> List.of(Habit.class);
            case Wish.Fragrant w -> List.of(Fragrance.class);
            case Wish.Feeds w -> List.of(Wildlife.class);
            case Wish.ServesAs w -> List.of(Use.class);
            case Wish.OfSex w -> List.of(Sex.class);
            case Wish.FruitsAlone w -> List.of(SelfFertility.class);
            default -> List.of(Foliage.class, Tolerance.class);
        };
    }

    /// The place asked for when the plant is at home there, else in how many places it is.
    private String home(Optional<Region> asked, Set<Region> home) {
        return asked.filter(home::contains)
                .map(Region::name)
                .orElseGet(() -> words.text(
                        home.size() == 1 ? "seen.regions.one" : "seen.regions.many",
                        Map.of("n", words.count(home.size()))));
    }
}
