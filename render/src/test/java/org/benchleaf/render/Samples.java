package org.benchleaf.render;

import java.net.URI;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.FactValue;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.PageCaution;
import org.benchleaf.render.page.PageFact;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Relative;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.render.page.StockBlock;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.Kinship;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.Tolerance;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.LiftWeight;
import org.benchleaf.shared.stock.StockSize;

/// Complete and plausible pages for tests, easy ones and hard ones. Facts of the plants are from memory.
final class Samples {
    static final URI BASE = URI.create("https://wrenfold.example");
    static final Shop SHOP = new Shop("Wrenfold Growers", "Ashlock, Pennsylvania · wrenfold.example");
    private static final Source MEMORY = Source.FROM_MEMORY;
    private static final Source USDA = new Source("USDA PLANTS");
    private static final Source RUTGERS = new Source("Rutgers NJAES E271");

    private Samples() {}

    static final BotanicalName ITEA =
            BotanicalName.ofSpecies("Itea", "virginica").withCultivar("Henry's Garnet");
    static final BotanicalName SUMMER_SNOWFLAKE =
            below("Viburnum", "plicatum", Rank.FORM, "tomentosum").withCultivar("Summer Snowflake");
    static final BotanicalName GOLDSTURM =
            below("Rudbeckia", "fulgida", Rank.VARIETY, "sullivantii").withCultivar("Goldsturm");
    static final BotanicalName TULIP_TREE = BotanicalName.ofSpecies("Liriodendron", "tulipifera");
    static final BotanicalName THYME =
            BotanicalName.ofSpecies("Thymus", "serpyllum").withCultivar("Pink Chintz");
    static final BotanicalName YEW = BotanicalName.ofGenus("Taxus")
            .withSpecies(new Epithet(HybridMark.HYBRID, "media"))
            .withCultivar("Hicksii");

    private static BotanicalName below(String genus, String species, Rank rank, String epithet) {
        BotanicalName name = BotanicalName.ofSpecies(genus, species);
        return new BotanicalName(
                name.genusMark(),
                name.genus(),
                name.species(),
                Optional.of(new Infraspecific(rank, Epithet.of(epithet))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static PlantKey key(long serial) {
        return PlantKey.ofSerial(serial);
    }

    static Optional<LengthRange> length(String text) {
        return LengthRange.read(text).toOptional();
    }

    static Optional<ZoneRange> zones(String text) {
        return ZoneRange.read(text).toOptional();
    }

    static List<PlantColor> colors(String text) {
        return PlantColor.readList(text).orThrow();
    }

    static Optional<Show> show(String colors, String months) {
        return Optional.of(new Show(colors(colors), months(months)));
    }

    static MonthSet months(String text) {
        return MonthSet.read(text).orThrow();
    }

    static List<Caution> cautions(String text) {
        return Caution.readList(text).orThrow();
    }

    static Optional<StockSize> size(String text) {
        return StockSize.read(text).toOptional();
    }

    static YearLook iteaYear() {
        return new YearLook(
                show("white #F3F1E6", "Jun-Jul"),
                Optional.of(Foliage.DECIDUOUS),
                List.of(),
                colors("green #5E7F4B"),
                colors("crimson #9C2233; orange #C8602B; burgundy #6A1F33"),
                Optional.of(months("Oct-Nov")),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    static YearLook yewYear() {
        return new YearLook(
                Optional.empty(),
                Optional.of(Foliage.EVERGREEN),
                colors("yellow-green #9DB25A"),
                colors("dark green #35553A"),
                List.of(),
                Optional.empty(),
                List.of(),
                show("red #B8312F", "Sep-Nov"),
                Optional.empty());
    }

    static BenchCard iteaCard() {
        return new BenchCard(
                PlantTitle.of(ITEA, "Virginia sweetspire"),
                Optional.of("Wine-red leaves hold into November when most shrubs are bare."),
                Set.of(Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE),
                Optional.of(WaterNeed.MEDIUM),
                Set.of(Moisture.MOIST),
                zones("5-9"),
                length("3-5 ft"),
                length("4-6 ft"),
                iteaYear(),
                List.of(),
                List.of(),
                size("#3"),
                ItemForm.REGULAR,
                Optional.of(Money.usDollars("21.50")),
                LiveLink.of(BASE, new ItemKey(key(1), 3)),
                SHOP,
                Optional.empty());
    }

    static BenchCard longNameCard() {
        return new BenchCard(
                PlantTitle.of(SUMMER_SNOWFLAKE, "repeat-blooming doublefile viburnum"),
                Optional.of(
                        "Lacecaps along level branches, and again through summer until hard frost; leaves turn wine in fall."),
                Set.of(Exposure.FULL_SUN, Exposure.PART_SHADE),
                Optional.of(WaterNeed.HIGH),
                Set.of(),
                zones("5b-8"),
                length("5-6 ft"),
                length("5-6 ft"),
                new YearLook(
                        show("white #F6F3EA", "May-Sep"),
                        Optional.of(Foliage.DECIDUOUS),
                        List.of(),
                        colors("green #5E7F4B"),
                        colors("burgundy #7A2B3C; red #A33A35"),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()),
                cautions(
                        "toxic: dogs, horses, livestock - unripe berries upset the stomach if eaten in number; thorns: people - stiff spines on the stems of old wood; spreads: gardens - seeds itself where birds carry the fruit"),
                List.of(),
                size("#15"),
                ItemForm.TREE_FORM,
                Optional.of(Money.usDollars("12250.00")),
                LiveLink.of(BASE, new ItemKey(key(2), 12)),
                SHOP,
                Optional.empty());
    }

    static BenchCard bareCard() {
        return new BenchCard(
                PlantTitle.of(GOLDSTURM),
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                YearLook.unknown(),
                List.of(),
                List.of(),
                Optional.empty(),
                ItemForm.REGULAR,
                Optional.empty(),
                LiveLink.of(BASE, key(3)),
                SHOP,
                Optional.empty());
    }

    static BenchCard yewCard() {
        return new BenchCard(
                PlantTitle.of(YEW, "Hicks yew"),
                Optional.of("Dark, dense and upright the whole winter through."),
                Set.of(Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE, Exposure.FULL_SHADE),
                Optional.of(WaterNeed.LOW),
                Set.of(),
                zones("4-7"),
                length("10-12 ft"),
                length("3-4 ft"),
                yewYear(),
                cautions("toxic: people, dogs, horses, livestock - leaves and seeds deadly if eaten"),
                List.of(),
                size("5-6 ft B&B"),
                ItemForm.REGULAR,
                Optional.of(Money.usDollars("165.00")),
                LiveLink.of(BASE, new ItemKey(key(4), 1)),
                SHOP,
                Optional.empty());
    }

    static List<BenchCard> cards() {
        return List.of(iteaCard(), longNameCard(), bareCard(), yewCard());
    }

    static List<Label> labels(int count) {
        List<Label> labels = new ArrayList<>();
        List<BotanicalName> names = List.of(ITEA, SUMMER_SNOWFLAKE, GOLDSTURM, TULIP_TREE, THYME, YEW);
        List<String> common = List.of(
                "Virginia sweetspire",
                "repeat-blooming doublefile viburnum",
                "black-eyed Susan",
                "tulip tree",
                "creeping thyme",
                "Hicks yew");
        List<String> sizes = List.of("#3", "#15", "19 cm", "2.5 in cal B&B", "#SP4", "5-6 ft B&B");
        for (int i = 0; i < count; i++) {
            int n = i % names.size();
            labels.add(new Label(
                    PlantTitle.of(names.get(n), common.get(n)),
                    size(sizes.get(n)),
                    n == 1 ? ItemForm.TREE_FORM : ItemForm.REGULAR,
                    Optional.of("B%d-%02d".formatted(1 + i / 12, 1 + i % 12)),
                    Optional.of("T%04d".formatted(i + 1)),
                    n == 0 ? Optional.of(Money.usDollars("21.50")) : Optional.empty(),
                    size(sizes.get(n))
                            .flatMap(LiftWeight::of)
                            .filter(LiftWeight::isHeavy)
                            .map(LiftWeight::pounds),
                    LiveLink.of(BASE, new ItemKey(key(i), 1 + i % 9))));
        }
        return labels;
    }

    private static PageFact terms(FactKind kind, Source source, org.benchleaf.shared.Term... terms) {
        return PageFact.of(kind, new FactValue.Terms(List.of(terms)), source);
    }

    static PlantSheet iteaSheet() {
        PlantKey key = key(1);
        return new PlantSheet(
                new PlantTitle(ITEA, List.of("Virginia sweetspire", "Virginia willow"), Optional.of("Iteaceae")),
                Optional.of("Wine-red leaves hold into November when most shrubs are bare."),
                Optional.of(
                        "A suckering shrub with arching stems and drooping white bottlebrushes of scented flower in early summer; takes wet ground and shade, and colors best in sun."),
                List.of(
                        terms(FactKind.LIFE_FORM, MEMORY, LifeForm.SHRUB),
                        terms(FactKind.HABIT, MEMORY, Habit.ARCHING),
                        terms(FactKind.FOLIAGE, MEMORY, Foliage.DECIDUOUS),
                        PageFact.of(
                                FactKind.HARDINESS,
                                new FactValue.Zones(zones("5-9").get()),
                                MEMORY),
                        PageFact.of(
                                FactKind.HEIGHT,
                                new FactValue.Length(length("3-5 ft").get()),
                                MEMORY),
                        PageFact.of(
                                FactKind.SPREAD,
                                new FactValue.Length(length("4-6 ft").get()),
                                MEMORY),
                        terms(FactKind.GROWTH_RATE, MEMORY, GrowthRate.MEDIUM),
                        terms(FactKind.EXPOSURE, MEMORY, Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE),
                        terms(FactKind.MOISTURE, MEMORY, Moisture.MOIST, Moisture.WET),
                        terms(FactKind.WATER_NEED, MEMORY, WaterNeed.MEDIUM),
                        terms(FactKind.SOIL_TEXTURE, MEMORY, SoilTexture.LOAM, SoilTexture.CLAY),
                        PageFact.of(
                                FactKind.SOIL_PH,
                                new FactValue.Acidity(PhRange.read("5.0-7.0").orThrow()),
                                MEMORY),
                        terms(FactKind.WET_TOLERANCE, MEMORY, Tolerance.HIGH),
                        new PageFact(
                                FactKind.DEER,
                                new FactValue.Terms(List.of(DamageRating.OCCASIONALLY)),
                                Optional.of(RUTGERS),
                                true),
                        PageFact.of(FactKind.FLOWER_COLOR, new FactValue.Colors(colors("white #F3F1E6")), MEMORY),
                        PageFact.of(FactKind.BLOOM, new FactValue.Months(months("Jun-Jul")), MEMORY),
                        terms(FactKind.FRAGRANCE, MEMORY, Fragrance.LIGHT),
                        PageFact.of(
                                FactKind.FALL_COLOR,
                                new FactValue.Colors(colors("crimson #9C2233; orange #C8602B; burgundy #6A1F33")),
                                MEMORY),
                        terms(FactKind.WILDLIFE, MEMORY, Wildlife.NECTAR, Wildlife.BIRD_FOOD),
                        terms(FactKind.USES, MEMORY, Use.MASSING, Use.RAIN_GARDEN, Use.SLOPE, Use.WOODLAND),
                        new PageFact(
                                FactKind.NATIVE_STATES,
                                new FactValue.Regions(Region.readSet(
                                                "US-AL US-DE US-FL US-GA US-MD US-NJ US-NC US-PA US-SC US-TN US-VA")
                                        .orThrow()),
                                Optional.of(USDA),
                                true)),
                iteaYear(),
                new SizeLook(
                        length("3-5 ft"),
                        length("4-6 ft"),
                        length("3-4 ft"),
                        length("4 ft"),
                        Optional.of(Habit.ARCHING),
                        Set.of(LifeForm.SHRUB),
                        Optional.of(Foliage.DECIDUOUS),
                        PlantColor.read("green #5E7F4B").toOptional()),
                List.of(),
                List.of(),
                List.of(new Relative(
                        Kinship.LARGER_SISTER_OF,
                        BotanicalName.ofSpecies("Itea", "virginica").withCultivar("Sprich"),
                        Optional.of(key(9)))),
                Optional.of(new StockBlock(
                        LocalDateTime.of(2026, 11, 25, 9, 0),
                        List.of(
                                new ItemLine(
                                        new ItemKey(key, 1),
                                        size("#1").get(),
                                        ItemForm.REGULAR,
                                        new Availability.SoldOut(),
                                        Optional.of(Money.usDollars("9.75")),
                                        List.of()),
                                new ItemLine(
                                        new ItemKey(key, 3),
                                        size("#3").get(),
                                        ItemForm.REGULAR,
                                        new Availability.InStock(120),
                                        Optional.of(Money.usDollars("21.50")),
                                        List.of(Condition.FULL_FALL_COLOR, Condition.FULL)),
                                new ItemLine(
                                        new ItemKey(key, 4),
                                        size("#5").get(),
                                        ItemForm.REGULAR,
                                        new Availability.From(
                                                YearWeek.read("2027-W14").orThrow(), 60),
                                        Optional.of(Money.usDollars("34.00")),
                                        List.of(Condition.NEXT_CROP_IN_SPRING))))),
                LiveLink.of(BASE, key),
                SHOP,
                Optional.empty());
    }

    static PlantSheet yewSheet() {
        PlantSheet itea = iteaSheet();
        return new PlantSheet(
                new PlantTitle(YEW, List.of("Hicks yew"), Optional.of("Taxaceae")),
                Optional.of("Dark, dense and upright the whole winter through."),
                Optional.of(
                        "A narrow, upright yew for hedges and screens in sun or deep shade; takes hard pruning, resents wet feet."),
                itea.facts(),
                yewYear(),
                new SizeLook(
                        length("10-12 ft"),
                        length("3-4 ft"),
                        length("5-6 ft"),
                        length("2-3 ft"),
                        Optional.of(Habit.COLUMNAR),
                        Set.of(LifeForm.CONIFER, LifeForm.SHRUB),
                        Optional.of(Foliage.EVERGREEN),
                        PlantColor.read("dark green #3D5F43").toOptional()),
                cautions(
                                "toxic: people, dogs, cats, horses, livestock - leaves and seeds deadly if eaten; irritant: people - sap can irritate skin; pollen: people - male plants shed much pollen in spring")
                        .stream()
                        .map(caution ->
                                PageCaution.of(caution, new Source("ASPCA Animal Poison Control list, 2024 copy")))
                        .toList(),
                List.of(new SaleNote(
                        RuleKind.SALE,
                        RuleArea.read("NY").orThrow(),
                        SaleStanding.RESTRICTED,
                        Optional.of(java.time.LocalDate.of(2015, 3, 10)),
                        false,
                        "with a printed notice",
                        new Source("invented rule for a test"))),
                List.of(),
                itea.stock(),
                LiveLink.of(BASE, key(4)),
                SHOP,
                Optional.empty());
    }

    static PlantSheet treeSheet() {
        PlantSheet itea = iteaSheet();
        return new PlantSheet(
                new PlantTitle(
                        TULIP_TREE,
                        List.of("tulip tree", "tulip poplar", "yellow poplar"),
                        Optional.of("Magnoliaceae")),
                Optional.empty(),
                Optional.empty(),
                itea.facts().subList(0, 6),
                new YearLook(
                        show("yellow-green #C9CF7A; orange #DB8A3A", "May-Jun"),
                        Optional.of(Foliage.DECIDUOUS),
                        List.of(),
                        colors("green #5F8246"),
                        colors("yellow #DDB63F; gold #C9962F"),
                        Optional.of(months("Oct")),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()),
                new SizeLook(
                        length("70-100 ft"),
                        length("35-50 ft"),
                        length("25-30 ft"),
                        Optional.empty(),
                        Optional.of(Habit.OVAL),
                        Set.of(LifeForm.TREE),
                        Optional.of(Foliage.DECIDUOUS),
                        PlantColor.read("green #5F8246").toOptional()),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                LiveLink.of(BASE, key(5)),
                SHOP,
                Optional.empty());
    }

    static PlantSheet thymeSheet() {
        PlantSheet itea = iteaSheet();
        return new PlantSheet(
                PlantTitle.of(THYME, "creeping thyme"),
                Optional.of("Gray-green mats stay through winter on dry walls."),
                Optional.empty(),
                itea.facts().subList(0, 9),
                new YearLook(
                        show("pink #D58AA8", "Jun-Jul"),
                        Optional.of(Foliage.SEMI_EVERGREEN),
                        List.of(),
                        colors("gray-green #8A9A80"),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()),
                new SizeLook(
                        length("2-4 in"),
                        length("18-24 in"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Habit.MAT),
                        Set.of(LifeForm.PERENNIAL, LifeForm.GROUNDCOVER),
                        Optional.of(Foliage.SEMI_EVERGREEN),
                        PlantColor.read("gray-green #8A9A80").toOptional()),
                List.of(),
                List.of(),
                List.of(),
                itea.stock(),
                LiveLink.of(BASE, key(6)),
                SHOP,
                Optional.empty());
    }

    static PlantSheet bareSheet() {
        return new PlantSheet(
                PlantTitle.of(GOLDSTURM),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                YearLook.unknown(),
                SizeLook.unknown(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                LiveLink.of(BASE, key(3)),
                SHOP,
                Optional.empty());
    }

    static List<PlantSheet> sheets() {
        return List.of(iteaSheet(), yewSheet(), treeSheet(), thymeSheet(), bareSheet());
    }
}
