package org.benchleaf.render;

import static org.benchleaf.render.Samples.BASE;
import static org.benchleaf.render.Samples.GOLDSTURM;
import static org.benchleaf.render.Samples.ITEA;
import static org.benchleaf.render.Samples.MEMORY;
import static org.benchleaf.render.Samples.RUTGERS;
import static org.benchleaf.render.Samples.SHOP;
import static org.benchleaf.render.Samples.THYME;
import static org.benchleaf.render.Samples.TULIP_TREE;
import static org.benchleaf.render.Samples.USDA;
import static org.benchleaf.render.Samples.YEW;
import static org.benchleaf.render.Samples.cautions;
import static org.benchleaf.render.Samples.colors;
import static org.benchleaf.render.Samples.iteaYear;
import static org.benchleaf.render.Samples.key;
import static org.benchleaf.render.Samples.length;
import static org.benchleaf.render.Samples.months;
import static org.benchleaf.render.Samples.show;
import static org.benchleaf.render.Samples.size;
import static org.benchleaf.render.Samples.yewYear;
import static org.benchleaf.render.Samples.zones;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.FactValue;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PageCaution;
import org.benchleaf.render.page.PageFact;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Relative;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.render.page.StockBlock;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
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

/// Product sheets for tests, easy ones and hard ones. Facts of the plants are from memory.
final class SampleSheets {
    private SampleSheets() {}

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
