package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;

/// What a phrase of the vocabulary means: one or more wishes, and how doubtful words were taken.
///
/// @param wishes at least one
/// @param note key of a note, when there is something to say
record WishWords(List<Wish> wishes, Optional<String> note) {
    /// Reads `light full shade + soil dry ~ shade-is-full`.
    ///
    /// @throws IllegalArgumentException when it is no wish
    static WishWords read(String expression) {
        String[] halves = expression.split("~");
        List<Wish> wishes = new ArrayList<>();
        for (String wish : halves[0].split("\\+")) {
            wishes.add(wish(wish.strip()));
        }
        return new WishWords(
                List.copyOf(wishes),
                Arrays.stream(halves).skip(1).map(String::strip).findFirst());
    }

    private static Wish wish(String text) {
        int blank = text.indexOf(' ');
        String kind = blank < 0 ? text : text.substring(0, blank);
        String value = blank < 0 ? "" : text.substring(blank + 1);
        return switch (kind) {
            case "light" -> new Wish.GrowsIn(one(Exposure.class, value));
            case "soil" -> new Wish.LikesSoil(one(Moisture.class, value));
            case "texture" -> new Wish.LikesTexture(one(SoilTexture.class, value));
            case "bears" -> new Wish.Bears(Wish.Stress.valueOf(constant(value)));
            case "alone" -> new Wish.LeftAloneBy(Wish.Browser.valueOf(constant(value)));
            case "form" -> new Wish.OfForm(set(LifeForm.class, value));
            case "foliage" -> new Wish.OfFoliage(set(Foliage.class, value));
            case "habit" -> new Wish.OfHabit(one(Habit.class, value));
            case "fragrant" -> new Wish.Fragrant();
            case "feeds" -> new Wish.Feeds(one(Wildlife.class, value));
            case "native" -> new Wish.NativeTo(Optional.empty());
            case "serves" -> new Wish.ServesAs(one(Use.class, value));
            case "safe" -> new Wish.SafeFor(one(Creature.class, value));
            default -> throw new IllegalArgumentException("not a wish: " + text);
        };
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
