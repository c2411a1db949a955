package org.benchleaf.app.service;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Settings;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.ItemOutlook;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.PageCaution;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.render.page.StockBlock;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.LiftWeight;

/// From a plant and its stock to exactly what a page prints. Pure: the same plant, stock, settings and
/// moment give the same page.
public final class SheetAssembler {
    private final Settings settings;
    private final Shop shop;
    private final CatalogView catalog;
    private final Relatives relatives;
    private final Lifting lifting;
    private final Wording words;
    private final Locale language;

    /// @param shop who prints
    /// @param catalog where a cultivar's taxon is looked up
    /// @param words of the page: their language chooses common names, and the weight of a ball is told in them
    public SheetAssembler(Settings settings, Shop shop, CatalogView catalog, Relatives relatives, Wording words) {
        this.lifting = new Lifting(words);
        this.words = words;
        this.language = words.language();
        this.settings = settings;
        this.shop = shop;
        this.catalog = catalog;
        this.relatives = relatives;
    }

    /// The product sheet, with the stock of that moment.
    public PlantSheet sheet(PlantRecord plant, PlantStock stock, LocalDateTime asOf) {
        return sheet(plant, stock, asOf, false);
    }

    /// The same.
    ///
    /// @param everySource whether what other sources state stands beside the facts shown
    public PlantSheet sheet(PlantRecord plant, PlantStock stock, LocalDateTime asOf, boolean everySource) {
        Facts facts = plant.facts();
        return new PlantSheet(
                title(plant),
                facts.value(Attributes.SELLING_NOTE),
                facts.value(Attributes.DESCRIPTION),
                PageFacts.of(facts, everySource ? plant.otherFacts() : List.of()),
                year(facts),
                size(facts),
                cautions(facts, stock),
                SaleNotes.of(facts, asOf.toLocalDate()),
                relatives.of(plant),
                Optional.of(stockBlock(stock, asOf)),
                LiveLink.of(settings.base(), plant.key()),
                shop(),
                facts.value(Attributes.PHOTOGRAPHS).map(List::getFirst).map(Photo::of));
    }

    /// The bench card of a plant, or of one item of it, whose size and price it then shows.
    ///
    /// @param day on which it stands there, for sale rules
    public BenchCard card(PlantRecord plant, Optional<ItemRecord> item, LocalDate day) {
        Facts facts = plant.facts();
        return new BenchCard(
                title(plant),
                facts.value(Attributes.SELLING_NOTE),
                facts.value(Attributes.EXPOSURE).orElse(Set.of()),
                facts.value(Attributes.WATER_NEED),
                facts.value(Attributes.MOISTURE).orElse(Set.of()),
                facts.value(Attributes.HARDINESS),
                facts.value(Attributes.HEIGHT),
                facts.value(Attributes.SPREAD),
                year(facts),
                cautions(facts, item),
                SaleNotes.notices(facts, settings.place(), day, words),
                item.map(ItemRecord::size),
                item.map(ItemRecord::form).orElse(org.benchleaf.shared.stock.ItemForm.REGULAR),
                item.flatMap(ItemRecord::price),
                item.map(one -> LiveLink.of(settings.base(), one.key()))
                        .orElseGet(() -> LiveLink.of(settings.base(), plant.key())),
                shop(),
                facts.value(Attributes.PHOTOGRAPHS).map(List::getFirst).map(Photo::of));
    }

    /// The label of a lot.
    public Label label(PlantRecord plant, ItemRecord item, LotRecord lot) {
        return new Label(
                title(plant),
                Optional.of(item.size()),
                item.form(),
                lot.place().isBlank() ? Optional.empty() : Optional.of(lot.place()),
                Optional.of(lot.lot()),
                Optional.empty(),
                LiftWeight.of(item.size()).filter(LiftWeight::isHeavy).map(LiftWeight::pounds),
                LiveLink.of(settings.base(), item.key()),
                item.gtin(),
                Optional.empty());
    }

    /// A cultivar without a common name of its own is called as its taxon is.
    PlantTitle title(PlantRecord plant) {
        List<String> own = commonNames(plant);
        List<String> names = own.isEmpty()
                ? plant.taxon().flatMap(catalog::plant).map(this::commonNames).orElse(List.of())
                : own;
        return new PlantTitle(plant.name(), names, plant.facts().value(Attributes.FAMILY));
    }

    /// In the language of the page where the catalog has any, or else in English: a name that people know is worth more
    /// than none.
    private List<String> commonNames(PlantRecord plant) {
        List<String> own = commonNames(plant, language);
        return own.isEmpty() ? commonNames(plant, Locale.ENGLISH) : own;
    }

    private static List<String> commonNames(PlantRecord plant, Locale language) {
        return plant.commonNames().stream()
                .filter(name -> name.language().getLanguage().equals(language.getLanguage()))
                .map(CommonName::text)
                .toList();
    }

    public Shop shop() {
        return shop;
    }

    List<PageCaution> cautions(Facts facts, PlantStock stock) {
        List<PageCaution> cautions = new ArrayList<>(
                facts.fact(Attributes.CAUTIONS).map(SheetAssembler::cautions).orElse(List.of()));
        lifting.heaviest(stock.items().stream().map(ItemRecord::size).toList()).ifPresent(cautions::add);
        return cautions;
    }

    private List<Caution> cautions(Facts facts, Optional<ItemRecord> item) {
        List<Caution> cautions =
                new ArrayList<>(facts.value(Attributes.CAUTIONS).orElse(List.of()));
        item.flatMap(one -> lifting.caution(one.size()))
                .map(PageCaution::caution)
                .ifPresent(cautions::add);
        return cautions;
    }

    private static List<PageCaution> cautions(Fact<List<Caution>> fact) {
        return fact.value().stream()
                .map(caution -> PageCaution.of(caution, fact.source()))
                .toList();
    }

    static YearLook year(Facts facts) {
        return new YearLook(
                show(facts.value(Attributes.FLOWER_COLOR), facts.value(Attributes.BLOOM)),
                facts.value(Attributes.FOLIAGE),
                facts.value(Attributes.SPRING_FOLIAGE_COLOR).orElse(List.of()),
                facts.value(Attributes.FOLIAGE_COLOR).orElse(List.of()),
                facts.value(Attributes.FALL_COLOR).orElse(List.of()),
                facts.value(Attributes.FALL_MONTHS),
                facts.value(Attributes.WINTER_FOLIAGE_COLOR).orElse(List.of()),
                show(facts.value(Attributes.FRUIT_COLOR), facts.value(Attributes.FRUIT)),
                show(facts.value(Attributes.STEM_COLOR), facts.value(Attributes.STEM_MONTHS)));
    }

    /// Shown only when it is known when: months are where a ring puts its color.
    private static Optional<Show> show(Optional<List<PlantColor>> colors, Optional<MonthSet> months) {
        boolean knownToHaveNone = colors.map(List::isEmpty).orElse(false);
        return months.filter(when -> !knownToHaveNone).map(when -> new Show(colors.orElse(List.of()), when));
    }

    private static SizeLook size(Facts facts) {
        return new SizeLook(
                facts.value(Attributes.HEIGHT),
                facts.value(Attributes.SPREAD),
                facts.value(Attributes.HEIGHT_10YR),
                facts.value(Attributes.SPREAD_10YR),
                facts.value(Attributes.HABIT),
                facts.value(Attributes.LIFE_FORM).orElse(Set.of()),
                facts.value(Attributes.FOLIAGE),
                facts.value(Attributes.FOLIAGE_COLOR)
                        .flatMap(colors -> colors.stream().findFirst()),
                facts.value(Attributes.STEM_COLOR)
                        .flatMap(colors -> colors.stream().findFirst()));
    }

    static StockBlock stockBlock(PlantStock stock, LocalDateTime asOf) {
        YearWeek now = YearWeek.of(asOf.toLocalDate());
        List<ItemLine> lines = new ArrayList<>();
        for (ItemRecord item : stock.items()) {
            ItemOutlook outlook = stock.outlook(item.key(), now);
            lines.add(new ItemLine(
                    item.key(),
                    item.size(),
                    item.form(),
                    stock.availability(item.key(), now),
                    item.price(),
                    outlook.seen().map(SheetAssembler::seen).orElse(List.of()),
                    outlook.seen().map(ItemOutlook.LastSeen::day),
                    outlook.free() == 0
                            ? Optional.empty()
                            : outlook.coming().stream().findFirst().map(SheetAssembler::next)));
        }
        return new StockBlock(asOf, lines);
    }

    private static List<Condition> seen(ItemOutlook.LastSeen look) {
        return look.conditions().stream().sorted().toList();
    }

    private static Availability.From next(ItemOutlook.Coming crop) {
        return new Availability.From(crop.week(), crop.more());
    }
}
