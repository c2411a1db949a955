package org.benchleaf.search.facet;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;

/// One way to narrow an answer: values, each standing for a wish. What is counted for a value is how many plants miss
/// nothing that is asked, wishes of the same facet set aside, and meet the wish of the value.
public enum Facet implements Term {
    KIND("kind", choices(LifeForm.class, form -> new Wish.OfForm(Set.of(form)))),
    FOLIAGE("foliage", choices(Foliage.class, foliage -> new Wish.OfFoliage(Set.of(foliage)))),
    LIGHT("light", choices(Exposure.class, Wish.GrowsIn::new)),
    SOIL("soil", choices(Moisture.class, Wish.LikesSoil::new)),
    TEXTURE("texture", choices(SoilTexture.class, Wish.LikesTexture::new)),
    HABIT("habit", choices(Habit.class, Wish.OfHabit::new)),
    FLOWER_COLOR("flower color", colors(Season.FLOWER)),
    FALL_COLOR("fall color", colors(Season.FALL_COLOR)),
    USE("use", choices(Use.class, Wish.ServesAs::new)),
    WILDLIFE("wildlife", choices(Wildlife.class, Wish.Feeds::new)),
    LEFT_ALONE_BY(
            "left alone by",
            Map.of(
                    "deer", new Wish.LeftAloneBy(Wish.Browser.DEER),
                    "rabbit", new Wish.LeftAloneBy(Wish.Browser.RABBIT))),
    NATIVE("native", Map.of("native", new Wish.NativeTo(Optional.empty()))),
    /// Its values are the sizes that the shop sells; counted is who has enough of them in time.
    SIZE("size", Map.of());

    /// Those counted when nothing else is said.
    public static final Set<Facet> USUAL =
            Collections.unmodifiableSet(EnumSet.of(KIND, FOLIAGE, LIGHT, FLOWER_COLOR, USE));

    private final String term;
    private final Map<String, Wish> choices;

    Facet(String term, Map<String, Wish> choices) {
        this.term = term;
        this.choices = choices;
    }

    @Override
    public String term() {
        return term;
    }

    /// Its values and the wish that each stands for, in the order of the vocabulary; none for [#SIZE].
    public Map<String, Wish> choices() {
        return choices;
    }

    /// Whether a wish is about what this facet narrows by, and is set aside when its values are counted.
    public boolean isAbout(Wish wish) {
        return switch (this) {
            case SIZE -> wish instanceof Wish.InStock;
            case FLOWER_COLOR -> wish instanceof Wish.Shows shows && shows.season() == Season.FLOWER;
            case FALL_COLOR -> wish instanceof Wish.Shows shows && shows.season() == Season.FALL_COLOR;
            default -> choices.values().iterator().next().getClass().equals(wish.getClass());
        };
    }

    private static <E extends Enum<E> & Term> Map<String, Wish> choices(Class<E> terms, Function<E, Wish> wish) {
        Map<String, Wish> values = new LinkedHashMap<>();
        Arrays.stream(terms.getEnumConstants()).forEach(term -> values.put(term.term(), wish.apply(term)));
        return Collections.unmodifiableMap(values);
    }

    private static Map<String, Wish> colors(Season season) {
        return choices(ColorFamily.class, color -> new Wish.Shows(season, Optional.empty(), Optional.of(color)));
    }
}
