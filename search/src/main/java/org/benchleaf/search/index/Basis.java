package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.fit.Renown;
import org.benchleaf.search.fit.RightsJudge;
import org.benchleaf.search.fit.WinterJudge;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.KnownFor;

/// The facts that a kind of wish is judged by, kept together in one column of the index.
///
/// Two plants with the same text here get the same judgement, so each text is judged once for all of them. Changing
/// this list changes the index: raise [IndexFormat#VERSION].
public enum Basis {
    HARDINESS(Attributes.HARDINESS),
    HEAT(Attributes.HEAT_ZONE),
    EXPOSURE(EnumSet.of(KnownFor.SHADE, KnownFor.DRY_SHADE), Attributes.EXPOSURE),
    MOISTURE(
            EnumSet.of(KnownFor.DROUGHT, KnownFor.DRY_SHADE, KnownFor.WET_GROUND, KnownFor.RAIN_GARDEN),
            Attributes.MOISTURE),
    TEXTURE(EnumSet.of(KnownFor.CLAY), Attributes.SOIL_TEXTURE),
    PH(Attributes.SOIL_PH),
    WATER(Attributes.WATER_NEED),
    GROWTH(Attributes.GROWTH_RATE),
    DROUGHT(EnumSet.of(KnownFor.DROUGHT), Attributes.DROUGHT_TOLERANCE, Attributes.MOISTURE),
    WET_FEET(EnumSet.of(KnownFor.WET_GROUND), Attributes.WET_TOLERANCE, Attributes.MOISTURE),
    SALT_SOIL(EnumSet.of(KnownFor.SALT), Attributes.SALT_SOIL),
    SALT_SPRAY(EnumSet.of(KnownFor.SALT), Attributes.SALT_SPRAY),
    JUGLONE(EnumSet.of(KnownFor.WALNUT), Attributes.JUGLONE),
    COMPACTION(EnumSet.of(KnownFor.CITY), Attributes.COMPACTION),
    DEER(EnumSet.of(KnownFor.DEER), Attributes.DEER),
    RABBIT(Attributes.RABBIT),
    HEIGHT(Attributes.HEIGHT),
    SPREAD(Attributes.SPREAD),
    TEN_YEARS(Attributes.HEIGHT_10YR, Attributes.SPREAD_10YR),
    LIFE_FORM(Attributes.LIFE_FORM),
    FOLIAGE(Attributes.FOLIAGE),
    HABIT(Attributes.HABIT),
    FLOWER(EnumSet.of(KnownFor.FLOWERS), Attributes.FLOWER_COLOR, Attributes.BLOOM),
    FRUIT(EnumSet.of(KnownFor.FRUIT), Attributes.FRUIT_COLOR, Attributes.FRUIT),
    STEM(
            EnumSet.of(KnownFor.BARK, KnownFor.STEMS),
            Attributes.STEM_COLOR,
            Attributes.STEM_MONTHS,
            Attributes.STEM_NOTE),
    FALL_COLOR(EnumSet.of(KnownFor.FALL_COLOR), Attributes.FALL_COLOR, Attributes.FALL_MONTHS, Attributes.FOLIAGE),
    LEAVES(
            EnumSet.of(KnownFor.FOLIAGE),
            Attributes.FOLIAGE_COLOR,
            Attributes.SPRING_FOLIAGE_COLOR,
            Attributes.WINTER_FOLIAGE_COLOR,
            Attributes.FOLIAGE),
    WINTER(
            Attributes.STEM_COLOR,
            Attributes.STEM_MONTHS,
            Attributes.FRUIT_COLOR,
            Attributes.FRUIT,
            Attributes.FLOWER_COLOR,
            Attributes.BLOOM,
            Attributes.FOLIAGE,
            Attributes.WINTER_FOLIAGE_COLOR),
    FRAGRANCE(EnumSet.of(KnownFor.FRAGRANCE), Attributes.FRAGRANCE),
    WILDLIFE(EnumSet.of(KnownFor.POLLINATORS, KnownFor.BIRDS), Attributes.WILDLIFE),
    ORIGIN(Attributes.NATIVE_STATES, Attributes.NATIVE_RANGE),
    USES(Renown.uses(), Attributes.USES),
    CAUTIONS(Attributes.CAUTIONS),
    SALE_RULES(Attributes.SALE_RULES),
    SEX(Attributes.SEX),
    SELF_FERTILE(Attributes.SELF_FERTILE),
    FAMILY(Attributes.FAMILY),
    /// What is said of rights, and whether the name is that of a wild species.
    RIGHTS(Attributes.RIGHTS),
    GENUS(),
    SPECIES();

    private static final String PART = "\u001f";
    private static final Source CATALOG = new Source("the catalog");
    private static final BotanicalName ANY = BotanicalName.ofGenus("Planta");
    private static final BotanicalName ANY_SPECIES = BotanicalName.ofSpecies("Planta", "ulla");
    /// Begins the rights of a wild species.
    private static final String WILD = "\u001e";

    /// Stands for a plant of which it is known what it is known for, and it is nothing of this.
    private static final String NOT_FOR_THIS = "-";

    private final List<Attribute<?>> attributes;
    private final Set<KnownFor> renown;
    private final String field = "by." + name().toLowerCase(Locale.ROOT);

    Basis(Attribute<?>... attributes) {
        this(Set.of(), attributes);
    }

    /// @param renown what plants may be known for that a wish of this kind asks for
    Basis(Set<KnownFor> renown, Attribute<?>... attributes) {
        this.renown = renown;
        this.attributes = List.of(attributes);
    }

    /// What a wish is judged by; empty for wishes about stock and price, which are not in the index.
    public static Optional<Basis> of(Wish wish) {
        return switch (wish) {
            case Wish.HardyIn w -> Optional.of(HARDINESS);
            case Wish.BearsHeat w -> Optional.of(HEAT);
            case Wish.GrowsIn w -> Optional.of(EXPOSURE);
            case Wish.LikesSoil w -> Optional.of(MOISTURE);
            case Wish.LikesTexture w -> Optional.of(TEXTURE);
            case Wish.GrowsAtPh w -> Optional.of(PH);
            case Wish.NeedsAtMost w -> Optional.of(WATER);
            case Wish.GrowsAtLeast w -> Optional.of(GROWTH);
            case Wish.Bears(var stress) ->
                Optional.of(
                        switch (stress) {
                            case DROUGHT -> DROUGHT;
                            case WET_FEET -> WET_FEET;
                            case SALT_IN_SOIL -> SALT_SOIL;
                            case SALT_SPRAY -> SALT_SPRAY;
                            case JUGLONE -> JUGLONE;
                            case COMPACTION -> COMPACTION;
                        });
            case Wish.LeftAloneBy(var browser) -> Optional.of(browser == Wish.Browser.DEER ? DEER : RABBIT);
            case Wish.NoTallerThan w -> Optional.of(HEIGHT);
            case Wish.AtLeastTall w -> Optional.of(HEIGHT);
            case Wish.NoWiderThan w -> Optional.of(SPREAD);
            case Wish.AtLeastWide w -> Optional.of(SPREAD);
            case Wish.AtTenYears w -> Optional.of(TEN_YEARS);
            case Wish.OfForm w -> Optional.of(LIFE_FORM);
            case Wish.OfFoliage w -> Optional.of(FOLIAGE);
            case Wish.OfHabit w -> Optional.of(HABIT);
            case Wish.Shows(var season, var months, var color) ->
                Optional.of(
                        switch (season) {
                            case FLOWER -> FLOWER;
                            case FOLIAGE -> LEAVES;
                            case FALL_COLOR -> FALL_COLOR;
                            case FRUIT -> FRUIT;
                            case STEM -> STEM;
                        });
            case Wish.ShowsInWinter w -> Optional.of(WINTER);
            case Wish.Fragrant w -> Optional.of(FRAGRANCE);
            case Wish.Feeds w -> Optional.of(WILDLIFE);
            case Wish.NativeTo w -> Optional.of(ORIGIN);
            case Wish.ServesAs w -> Optional.of(USES);
            case Wish.SafeFor w -> Optional.of(CAUTIONS);
            case Wish.ShipTo w -> Optional.of(SALE_RULES);
            case Wish.OfFamily w -> Optional.of(FAMILY);
            case Wish.NotOfFamily w -> Optional.of(FAMILY);
            case Wish.FreeOf w -> Optional.of(RIGHTS);
            case Wish.NotOfGenus w -> Optional.of(GENUS);
            case Wish.OfGenus w -> Optional.of(GENUS);
            case Wish.OfSpecies w -> Optional.of(SPECIES);
            case Wish.NotOfSpecies w -> Optional.of(SPECIES);
            case Wish.NamedInstead w -> Optional.of(SPECIES);
            case Wish.OfSex w -> Optional.of(SEX);
            case Wish.FruitsAlone w -> Optional.of(SELF_FERTILE);
            case Wish.InStock w -> Optional.empty();
            case Wish.AtMostPrice w -> Optional.empty();
        };
    }

    /// The only names that a wish about names tells from all others.
    ///
    /// @param texts as they stand in the index
    /// @param taxa all of whose names are meant; of two that a name belongs to, the lower one
    record Names(Set<String> texts, Set<TaxonName> taxa) {}

    /// What a wish about names tells apart. Names are nearly as many as plants, and each answer about substitutes asks
    /// for others.
    ///
    /// @return empty for a wish that every text must be judged for
    static Optional<Names> toldApart(Wish wish) {
        return switch (wish) {
            case Wish.OfGenus(var genus) -> Optional.of(new Names(Set.of(genus), Set.of()));
            case Wish.NotOfGenus(var genus) -> Optional.of(new Names(Set.of(genus), Set.of()));
            case Wish.OfSpecies(var genus, var epithet) -> species(genus, epithet);
            case Wish.NotOfSpecies(var genus, var epithet) -> species(genus, epithet);
            case Wish.NamedInstead(var original, var publishers) ->
                Optional.of(new Names(Set.of(), publishers.keySet()));
            default -> Optional.empty();
        };
    }

    /// What is named under its genus alone may be of that species.
    private static Optional<Names> species(String genus, String epithet) {
        return Optional.of(new Names(Set.of(genus), Set.of(new TaxonName(genus + " " + epithet))));
    }

    /// The name of its column in the index.
    String field() {
        return field;
    }

    /// What a plant has here; empty when nothing of it is known.
    Optional<String> textOf(PlantRecord plant) {
        if (this == GENUS) {
            return Optional.of(plant.name().genus());
        }
        if (this == SPECIES) {
            return Optional.of(TaxonName.of(plant.name()).text());
        }
        if (this == RIGHTS && RightsJudge.isWild(plant.name())) {
            return Optional.of(WILD + text(plant.facts(), Attributes.RIGHTS));
        }
        Facts facts = this == WINTER ? WinterJudge.essence(plant.facts()) : plant.facts();
        StringBuilder text = new StringBuilder();
        for (int part = 0; part < attributes.size(); part++) {
            text.append(part == 0 ? "" : PART).append(text(facts, attributes.get(part)));
        }
        if (text.length() < attributes.size()) {
            return Optional.empty();
        }
        if (!renown.isEmpty()) {
            plant.facts()
                    .value(Attributes.KNOWN_FOR)
                    .ifPresent(known -> text.append(PART).append(renownIn(known)));
        }
        return Optional.of(text.toString());
    }

    private static String text(Facts facts, Attribute<?> attribute) {
        return facts.fact(attribute).map(Fact::text).orElse("");
    }

    private String renownIn(Set<KnownFor> known) {
        String words = Term.write(known.stream().filter(renown::contains).toList());
        return words.isEmpty() ? NOT_FOR_THIS : words;
    }

    /// The facts that such a text stands for.
    Known read(String text) {
        if (this == GENUS) {
            return new Known(Facts.NONE, BotanicalName.ofGenus(text));
        }
        if (this == SPECIES) {
            return new Known(Facts.NONE, new TaxonName(text).asName());
        }
        boolean wild = text.startsWith(WILD);
        List<Fact<?>> facts = new ArrayList<>();
        String[] parts = (wild ? text.substring(WILD.length()) : text).split(PART, -1);
        if (parts.length > attributes.size()) {
            facts.add(renownOf(parts[attributes.size()]));
        }
        for (int part = 0; part < Math.min(parts.length, attributes.size()); part++) {
            if (!parts[part].isEmpty()) {
                facts.add(fact(attributes.get(part), parts[part]));
            }
        }
        return new Known(Facts.of(facts), wild ? ANY_SPECIES : ANY);
    }

    private static Fact<Set<KnownFor>> renownOf(String text) {
        Set<KnownFor> known = text.equals(NOT_FOR_THIS)
                ? Set.of()
                : Term.readSet(KnownFor.class, text).orThrow();
        return new Fact<>(Attributes.KNOWN_FOR, known, CATALOG, false);
    }

    private static <T> Fact<T> fact(Attribute<T> attribute, String text) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), CATALOG, false);
    }

    /// The facts and the name that a wish of this basis looks at; everything else of the plant is left out.
    record Known(Facts facts, BotanicalName name) {
        static final Known NOTHING = new Known(Facts.NONE, ANY);
    }
}
