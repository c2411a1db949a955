package org.benchleaf.render;

import static org.benchleaf.render.Samples.BASE;
import static org.benchleaf.render.Samples.GOLDSTURM;
import static org.benchleaf.render.Samples.ITEA;
import static org.benchleaf.render.Samples.SHOP;
import static org.benchleaf.render.Samples.SUMMER_SNOWFLAKE;
import static org.benchleaf.render.Samples.THYME;
import static org.benchleaf.render.Samples.TULIP_TREE;
import static org.benchleaf.render.Samples.YEW;
import static org.benchleaf.render.Samples.cautions;
import static org.benchleaf.render.Samples.colors;
import static org.benchleaf.render.Samples.iteaYear;
import static org.benchleaf.render.Samples.key;
import static org.benchleaf.render.Samples.length;
import static org.benchleaf.render.Samples.show;
import static org.benchleaf.render.Samples.size;
import static org.benchleaf.render.Samples.yewYear;
import static org.benchleaf.render.Samples.zones;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.LiftWeight;

/// Bench cards and labels for tests, easy ones and hard ones. Facts of the plants are from memory.
final class SampleCards {
    private SampleCards() {}

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

    static BenchCard withShop(BenchCard card, Shop shop) {
        return copy(card, card.title(), shop);
    }

    /// The card under other names and of another shop, without its line why now.
    static BenchCard copy(BenchCard card, PlantTitle title, Shop shop) {
        return new BenchCard(
                title,
                Optional.empty(),
                card.exposure(),
                card.waterNeed(),
                card.moisture(),
                card.hardiness(),
                card.height(),
                card.spread(),
                card.year(),
                card.cautions(),
                card.notices(),
                card.stockSize(),
                card.form(),
                card.price(),
                card.link(),
                shop,
                Optional.empty());
    }

    /// The card with what a sale rule asks to print, without its line why now.
    static BenchCard withNotices(BenchCard card, List<String> notices) {
        return withWarnings(card, notices, card.cautions());
    }

    static BenchCard withWarnings(BenchCard card, List<String> notices, List<Caution> cautions) {
        return new BenchCard(
                card.title(),
                Optional.empty(),
                card.exposure(),
                card.waterNeed(),
                card.moisture(),
                card.hardiness(),
                card.height(),
                card.spread(),
                card.year(),
                cautions,
                notices,
                card.stockSize(),
                card.form(),
                card.price(),
                card.link(),
                card.shop(),
                Optional.empty());
    }
}
