package org.benchleaf.app.service;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.ItemForm;

/// From plants and their stock to documents of many plants.
public final class DocumentAssembler {
    /// Kinds by which plants are grouped, the telling ones first: a yew is a shrub too, and sought among conifers.
    private static final List<LifeForm> TELLING = List.of(
            LifeForm.CONIFER,
            LifeForm.TREE,
            LifeForm.VINE,
            LifeForm.GRASS,
            LifeForm.FERN,
            LifeForm.BULB,
            LifeForm.ANNUAL,
            LifeForm.SHRUB,
            LifeForm.GROUNDCOVER,
            LifeForm.PERENNIAL);

    private final CatalogView catalog;
    private final SheetAssembler sheets;
    private final URI base;

    /// @param base where printed codes lead
    public DocumentAssembler(CatalogView catalog, SheetAssembler sheets, URI base) {
        this.catalog = catalog;
        this.sheets = sheets;
        this.base = base;
    }

    /// Plants side by side.
    ///
    /// @param plants two to four
    public Comparison comparison(List<PlantRecord> plants, LocalDateTime now) {
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        return new Comparison(
                plants.stream()
                        .map(plant -> sheets.sheet(plant, stockOf(stock, plant), now))
                        .toList(),
                sheets.shop());
    }

    /// Every plant of which there is any stock, and which is not retired.
    public List<PlantRecord> forSale() {
        List<PlantStock> stocks = new ArrayList<>();
        catalog.forEachStock(stocks::add);
        Map<PlantKey, PlantRecord> plants =
                catalog.plants(stocks.stream().map(PlantStock::plant).toList());
        return plants.values().stream().filter(plant -> !plant.retired()).toList();
    }

    /// Plants with what can be had of them, grouped by what kind of plant each is, by name.
    ///
    /// @param all whether what is sold out stands in it too
    public AvailabilityList availability(List<PlantRecord> plants, LocalDateTime now, boolean all) {
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        Map<LifeForm, List<PlantItems>> groups = new EnumMap<>(LifeForm.class);
        List<PlantItems> others = new ArrayList<>();
        plants.stream()
                .sorted(Comparator.comparing(plant -> plant.name().toString()))
                .forEach(plant -> {
                    PlantItems items = items(plant, stockOf(stock, plant), now, all);
                    if (!items.items().isEmpty()) {
                        kind(plant)
                                .map(kind -> groups.computeIfAbsent(kind, fresh -> new ArrayList<>()))
                                .orElse(others)
                                .add(items);
                    }
                });
        List<AvailabilityList.Group> page = new ArrayList<>();
        groups.forEach((kind, group) -> page.add(new AvailabilityList.Group(Optional.of(kind), group)));
        if (!others.isEmpty()) {
            page.add(new AvailabilityList.Group(Optional.empty(), others));
        }
        return new AvailabilityList(now, page, sheets.shop());
    }

    /// A bulletin of chosen plants, the first of which leads.
    ///
    /// @param reasons why each is worth buying, in their order; a plant without one is told by its selling note
    public Bulletin bulletin(
            List<PlantRecord> plants, List<String> reasons, LocalDate from, LocalDate to, LocalDateTime now) {
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        List<Bulletin.Pick> picks = new ArrayList<>();
        for (PlantRecord plant : plants) {
            String given = picks.size() < reasons.size() ? reasons.get(picks.size()) : "";
            picks.add(pick(plant, stockOf(stock, plant), given, now));
        }
        List<PlantItems> items = plants.stream()
                .map(plant -> items(plant, stockOf(stock, plant), now, false))
                .filter(plant -> !plant.items().isEmpty())
                .toList();
        return new Bulletin(
                from,
                to,
                picks.stream().findFirst(),
                picks.subList(Math.min(1, picks.size()), picks.size()),
                items,
                sheets.shop());
    }

    /// A plant list for its client.
    ///
    /// @param report the list as it stands
    public ListPack pack(ListReport report, LocalDateTime now) {
        Map<PlantKey, PlantSheet> pages = new LinkedHashMap<>();
        List<ListPack.Line> lines = new ArrayList<>();
        for (ListReport.Line line : report.lines()) {
            lines.add(new ListPack.Line(
                    line.line().number(),
                    line.plant().map(plant -> items(plant, line.stock(), now, false)),
                    line.item().map(ItemRecord::size).or(() -> line.line().size()),
                    line.item().map(ItemRecord::form).orElse(ItemForm.REGULAR),
                    line.line().quantity(),
                    line.missing(),
                    line.item().flatMap(ItemRecord::price),
                    line.total(),
                    line.line().worked(),
                    line.line().note()));
            line.plant()
                    .ifPresent(plant ->
                            pages.computeIfAbsent(plant.key(), fresh -> sheets.sheet(plant, line.stock(), now)));
        }
        ListSite site = report.list().site();
        return new ListPack(
                report.list().name(),
                now.toLocalDate(),
                new ListPack.Site(
                        site.zone(), site.light(), site.soil(), site.shipTo().map(Destination::toString), site.by()),
                lines,
                report.totals(),
                List.copyOf(pages.values()),
                sheets.shop());
    }

    private Bulletin.Pick pick(PlantRecord plant, PlantStock stock, String reason, LocalDateTime now) {
        return new Bulletin.Pick(
                sheets.title(plant),
                reason.isBlank() ? plant.facts().value(Attributes.SELLING_NOTE).orElse("") : reason.strip(),
                SheetAssembler.year(plant.facts()),
                items(plant, stock, now, false).items(),
                sheets.cautions(plant.facts(), PlantStock.none(plant.key())),
                LiveLink.of(base, plant.key()),
                plant.facts().value(Attributes.PHOTOGRAPHS).map(List::getFirst).map(Photo::of));
    }

    /// @param all whether what cannot be had stands in it too
    PlantItems items(PlantRecord plant, PlantStock stock, LocalDateTime now, boolean all) {
        List<ItemLine> lines = SheetAssembler.stockBlock(stock, now).items().stream()
                .filter(line -> all || canBeHad(line.availability()))
                .toList();
        return new PlantItems(
                sheets.title(plant), SheetAssembler.year(plant.facts()), lines, LiveLink.of(base, plant.key()));
    }

    private static boolean canBeHad(Availability availability) {
        return availability instanceof Availability.InStock || availability instanceof Availability.From;
    }

    private static Optional<LifeForm> kind(PlantRecord plant) {
        Set<LifeForm> kinds = plant.facts().value(Attributes.LIFE_FORM).orElse(Set.of());
        return TELLING.stream().filter(kinds::contains).findFirst();
    }

    private Map<PlantKey, PlantStock> stockOf(List<PlantRecord> plants) {
        return catalog.stock(plants.stream().map(PlantRecord::key).toList());
    }

    private static PlantStock stockOf(Map<PlantKey, PlantStock> stock, PlantRecord plant) {
        return stock.getOrDefault(plant.key(), PlantStock.none(plant.key()));
    }
}
