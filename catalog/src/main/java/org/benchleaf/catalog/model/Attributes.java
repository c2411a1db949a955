package org.benchleaf.catalog.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.plant.Grown;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.KnownFor;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Photograph;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.SelfFertility;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Juglone;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.Tolerance;
import org.benchleaf.shared.site.WaterNeed;

/// Everything the catalog can know about a plant: the one list of attributes, in the order of spreadsheets and
/// sheets.
public final class Attributes {
    private static final Codec<List<PlantColor>> COLORS = Codec.of(PlantColor::readList, PlantColor::write);
    private static final Codec<LengthRange> LENGTH = Codec.of(LengthRange::read);
    private static final Codec<MonthSet> MONTHS = Codec.of(MonthSet::read);
    private static final Codec<Tolerance> TOLERANCE = Codec.term(Tolerance.class);
    private static final Codec<DamageRating> DAMAGE = Codec.term(DamageRating.class);

    public static final Attribute<String> FAMILY = Attribute.of("family", Codec.text());
    public static final Attribute<Set<LifeForm>> LIFE_FORM = Attribute.of("life_form", Codec.terms(LifeForm.class));
    public static final Attribute<Habit> HABIT = Attribute.of("habit", Codec.term(Habit.class));
    public static final Attribute<Foliage> FOLIAGE = Attribute.of("foliage", Codec.term(Foliage.class));
    public static final Attribute<ZoneRange> HARDINESS = Attribute.of("hardiness", Codec.of(ZoneRange::read));
    public static final Attribute<HeatZoneRange> HEAT_ZONE = Attribute.of("heat_zone", Codec.of(HeatZoneRange::read));
    public static final Attribute<LengthRange> HEIGHT = Attribute.of("height", LENGTH);
    public static final Attribute<LengthRange> SPREAD = Attribute.of("spread", LENGTH);
    public static final Attribute<LengthRange> HEIGHT_10YR = Attribute.of("height_10yr", LENGTH);
    public static final Attribute<LengthRange> SPREAD_10YR = Attribute.of("spread_10yr", LENGTH);
    public static final Attribute<GrowthRate> GROWTH_RATE = Attribute.of("growth_rate", Codec.term(GrowthRate.class));
    public static final Attribute<Set<Exposure>> EXPOSURE = Attribute.of("exposure", Codec.terms(Exposure.class));
    public static final Attribute<Set<Moisture>> MOISTURE = Attribute.of("moisture", Codec.terms(Moisture.class));
    public static final Attribute<Tolerance> DROUGHT_TOLERANCE = Attribute.of("drought_tolerance", TOLERANCE);
    public static final Attribute<Tolerance> WET_TOLERANCE = Attribute.of("wet_tolerance", TOLERANCE);
    public static final Attribute<PhRange> SOIL_PH = Attribute.of("soil_ph", Codec.of(PhRange::read));
    public static final Attribute<Set<SoilTexture>> SOIL_TEXTURE =
            Attribute.of("soil_texture", Codec.terms(SoilTexture.class));
    public static final Attribute<Tolerance> SALT_SOIL = Attribute.of("salt_soil", TOLERANCE);
    public static final Attribute<Tolerance> SALT_SPRAY = Attribute.of("salt_spray", TOLERANCE);
    public static final Attribute<Juglone> JUGLONE = Attribute.of("juglone", Codec.term(Juglone.class));
    public static final Attribute<Tolerance> COMPACTION = Attribute.of("compaction", TOLERANCE);
    public static final Attribute<WaterNeed> WATER_NEED = Attribute.of("water_need", Codec.term(WaterNeed.class));
    public static final Attribute<DamageRating> DEER = Attribute.of("deer", DAMAGE);
    public static final Attribute<DamageRating> RABBIT = Attribute.of("rabbit", DAMAGE);
    public static final Attribute<List<PlantColor>> FLOWER_COLOR = Attribute.of("flower_color", COLORS);
    public static final Attribute<MonthSet> BLOOM = Attribute.of("bloom", MONTHS);
    public static final Attribute<Fragrance> FRAGRANCE = Attribute.of("fragrance", Codec.term(Fragrance.class));
    public static final Attribute<List<PlantColor>> FOLIAGE_COLOR = Attribute.of("foliage_color", COLORS);
    public static final Attribute<List<PlantColor>> SPRING_FOLIAGE_COLOR = Attribute.of("spring_foliage_color", COLORS);
    public static final Attribute<List<PlantColor>> WINTER_FOLIAGE_COLOR = Attribute.of("winter_foliage_color", COLORS);
    public static final Attribute<List<PlantColor>> FALL_COLOR = Attribute.of("fall_color", COLORS);
    public static final Attribute<MonthSet> FALL_MONTHS = Attribute.of("fall_months", MONTHS);
    public static final Attribute<List<PlantColor>> FRUIT_COLOR = Attribute.of("fruit_color", COLORS);
    public static final Attribute<MonthSet> FRUIT = Attribute.of("fruit", MONTHS);
    public static final Attribute<List<PlantColor>> STEM_COLOR = Attribute.of("stem_color", COLORS);
    public static final Attribute<MonthSet> STEM_MONTHS = Attribute.of("stem_months", MONTHS);
    public static final Attribute<String> STEM_NOTE = Attribute.of("stem_note", Codec.text());
    public static final Attribute<Set<Wildlife>> WILDLIFE = Attribute.of("wildlife", Codec.terms(Wildlife.class));
    public static final Attribute<Set<Use>> USES = Attribute.of("uses", Codec.terms(Use.class));
    public static final Attribute<Set<KnownFor>> KNOWN_FOR = Attribute.of("known_for", Codec.terms(KnownFor.class));
    public static final Attribute<Grown> GROWN = Attribute.of("grown", Codec.term(Grown.class));
    public static final Attribute<Set<Region>> NATIVE_STATES =
            Attribute.of("native_states", Codec.of(Region::readSet, Region::write));
    public static final Attribute<String> NATIVE_RANGE = Attribute.of("native_range", Codec.text());
    public static final Attribute<String> POLLINATION_GROUP = Attribute.of("pollination_group", Codec.text());
    public static final Attribute<Sex> SEX = Attribute.of("sex", Codec.term(Sex.class));
    public static final Attribute<List<String>> POLLINATION_PARTNERS =
            Attribute.of("pollination_partners", Codec.texts());
    public static final Attribute<SelfFertility> SELF_FERTILE =
            Attribute.of("self_fertile", Codec.term(SelfFertility.class));
    public static final Attribute<List<Caution>> CAUTIONS =
            Attribute.of("cautions", Codec.of(Caution::readList, Caution::write));
    public static final Attribute<List<String>> RELATIVES = Attribute.own("relatives", Codec.texts());
    public static final Attribute<String> RIGHTS = Attribute.own("rights", Codec.text());
    public static final Attribute<String> SELLING_NOTE = Attribute.own("selling_note", Codec.text());
    /// A cultivar is never shown by a photograph of its species.
    public static final Attribute<List<Photograph>> PHOTOGRAPHS =
            Attribute.own("photographs", Codec.of(Photograph::readList, Photograph::write));
    public static final Attribute<String> DESCRIPTION = Attribute.of("description", Codec.text());

    /// What the lists of sale rules say: worked out from its names whenever a plant is read, so that it is in no
    /// spreadsheet and not among [#all].
    public static final Attribute<PlantRules> SALE_RULES = Attribute.own("sale_rules", Codec.of(PlantRules::read));

    private static final List<Attribute<?>> ALL = List.of(
            FAMILY,
            LIFE_FORM,
            HABIT,
            FOLIAGE,
            HARDINESS,
            HEAT_ZONE,
            HEIGHT,
            SPREAD,
            HEIGHT_10YR,
            SPREAD_10YR,
            GROWTH_RATE,
            EXPOSURE,
            MOISTURE,
            DROUGHT_TOLERANCE,
            WET_TOLERANCE,
            SOIL_PH,
            SOIL_TEXTURE,
            SALT_SOIL,
            SALT_SPRAY,
            JUGLONE,
            COMPACTION,
            WATER_NEED,
            DEER,
            RABBIT,
            FLOWER_COLOR,
            BLOOM,
            FRAGRANCE,
            FOLIAGE_COLOR,
            SPRING_FOLIAGE_COLOR,
            WINTER_FOLIAGE_COLOR,
            FALL_COLOR,
            FALL_MONTHS,
            FRUIT_COLOR,
            FRUIT,
            STEM_COLOR,
            STEM_MONTHS,
            STEM_NOTE,
            WILDLIFE,
            USES,
            KNOWN_FOR,
            GROWN,
            NATIVE_STATES,
            NATIVE_RANGE,
            POLLINATION_GROUP,
            SEX,
            POLLINATION_PARTNERS,
            SELF_FERTILE,
            CAUTIONS,
            RELATIVES,
            RIGHTS,
            SELLING_NOTE,
            DESCRIPTION,
            PHOTOGRAPHS);

    private static final Map<String, Attribute<?>> BY_ID =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Attribute::id, Function.identity()));

    private Attributes() {}

    public static List<Attribute<?>> all() {
        return ALL;
    }

    public static Optional<Attribute<?>> byId(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }

    /// The ten-year sizes hold for the mature size they were stated with: a dwarf that states its own height
    /// does not take over how far its species gets in ten years.
    ///
    /// @return the attribute that, when stated by the cultivar itself, keeps this one from being inherited
    public static Optional<Attribute<?>> inheritedOnlyWith(Attribute<?> attribute) {
        if (attribute.equals(HEIGHT_10YR)) {
            return Optional.of(HEIGHT);
        }
        return attribute.equals(SPREAD_10YR) ? Optional.of(SPREAD) : Optional.empty();
    }

    /// The colors of what is shown in these months: a male holly, stated to have no fruit, does not take over when
    /// its species fruits.
    ///
    /// @return the attribute that keeps these months from being inherited when the cultivar states it as none
    public static Optional<Attribute<List<PlantColor>>> colorsIn(Attribute<?> months) {
        if (months.equals(BLOOM)) {
            return Optional.of(FLOWER_COLOR);
        }
        if (months.equals(FRUIT)) {
            return Optional.of(FRUIT_COLOR);
        }
        return months.equals(FALL_MONTHS) ? Optional.of(FALL_COLOR) : Optional.empty();
    }

    /// The colors that a plant shows in a season.
    public static Attribute<List<PlantColor>> colors(Season season) {
        return switch (season) {
            case FLOWER -> FLOWER_COLOR;
            case FOLIAGE -> FOLIAGE_COLOR;
            case FALL_COLOR -> FALL_COLOR;
            case FRUIT -> FRUIT_COLOR;
            case STEM -> STEM_COLOR;
        };
    }
}
