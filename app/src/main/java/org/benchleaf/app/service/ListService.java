package org.benchleaf.app.service;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.app.service.ListReport.Line;
import org.benchleaf.app.service.ListReport.Seen;
import org.benchleaf.app.service.ListReport.TierTotal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.PriceTier;
import org.benchleaf.search.pairing.Interest;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.ItemForm;

/// Holds a plant list against the catalog: what each line is filled from and costs, what is seen in each month,
/// and, by [ListChecks], what stands against it.
public final class ListService {
    private final CatalogView catalog;
    private final ListChecks checks;
    private final List<PriceTier> tiers;

    /// @param tiers what kinds of customers pay
    public ListService(CatalogView catalog, ListChecks checks, List<PriceTier> tiers) {
        this.catalog = catalog;
        this.checks = checks;
        this.tiers = List.copyOf(tiers);
    }

    /// The list with facts and stock as of now.
    ///
    /// @param checked whether it is checked too; without, there are no remarks
    public ListReport report(PlantList list, LocalDate today, boolean checked) {
        List<PlantKey> keys =
                list.lines().stream().map(ListLine::plant).distinct().toList();
        Map<PlantKey, PlantRecord> plants = catalog.plants(keys);
        Map<PlantKey, PlantStock> stocks = catalog.stock(keys);
        YearWeek by = list.site().by().orElse(YearWeek.of(today));
        Map<ItemKey, Integer> taken = new HashMap<>();
        List<Line> lines = new ArrayList<>();
        for (ListLine line : list.lines()) {
            PlantStock stock = stocks.getOrDefault(line.plant(), PlantStock.none(line.plant()));
            lines.add(line(line, Optional.ofNullable(plants.get(line.plant())), stock, by, taken));
        }
        int unpriced =
                (int) lines.stream().filter(line -> line.total().isEmpty()).count();
        return new ListReport(
                list,
                lines,
                checked ? checks.of(list, lines, today) : List.of(),
                months(lines),
                sums(lines.stream().flatMap(line -> line.total().stream())),
                tiers.stream().map(tier -> tierTotal(tier, lines)).toList(),
                unpriced);
    }

    /// The item with enough plants, in the usual form before others, the cheapest first; or else the one with
    /// most.
    private static Line line(
            ListLine line, Optional<PlantRecord> plant, PlantStock stock, YearWeek by, Map<ItemKey, Integer> taken) {
        Comparator<ItemRecord> best = Comparator.comparingInt(
                        (ItemRecord item) -> -Math.min(line.quantity(), free(stock, item, by, taken)))
                .thenComparing(item -> item.form() != ItemForm.REGULAR)
                .thenComparing(item -> item.price().map(Money::minor).orElse(Long.MAX_VALUE));
        Optional<ItemRecord> item = stock.items().stream()
                .filter(one -> line.size().isEmpty() || line.size().get().equals(one.size()))
                .min(best);
        int free = item.map(one -> free(stock, one, by, taken)).orElse(0);
        item.ifPresent(one -> taken.merge(one.key(), Math.min(free, line.quantity()), Integer::sum));
        Optional<Money> total = item.flatMap(ItemRecord::price).map(price -> times(price, line.quantity()));
        return new Line(line, plant, stock, item, free, total);
    }

    private static int free(PlantStock stock, ItemRecord item, YearWeek by, Map<ItemKey, Integer> taken) {
        return Math.max(0, stock.freeBy(item.key(), by) - taken.getOrDefault(item.key(), 0));
    }

    private static Map<Month, List<Seen>> months(List<Line> lines) {
        Map<Month, List<Seen>> months = new EnumMap<>(Month.class);
        for (Line line : lines) {
            line.plant()
                    .ifPresent(plant -> Interest.of(plant.facts()).forEach((season, when) -> {
                        for (Month month : Month.values()) {
                            if (when.contains(month)) {
                                months.computeIfAbsent(month, fresh -> new ArrayList<>())
                                        .add(new Seen(
                                                line.line().number(),
                                                plant.name().toString(),
                                                season));
                            }
                        }
                    }));
        }
        return months;
    }

    /// Each price is rounded to the cent before it is multiplied, as on an invoice.
    private static TierTotal tierTotal(PriceTier tier, List<Line> lines) {
        return new TierTotal(
                tier,
                sums(lines.stream()
                        .flatMap(line -> line.item().flatMap(ItemRecord::price).map(tier::of).stream()
                                .map(price -> times(price, line.line().quantity())))));
    }

    static Money times(Money price, int quantity) {
        return new Money(price.minor() * quantity, price.currency());
    }

    static List<Money> sums(Stream<Money> amounts) {
        Map<String, Money> sums = new TreeMap<>();
        amounts.forEach(amount -> sums.merge(
                amount.currency().getCurrencyCode(),
                amount,
                (one, other) -> new Money(one.minor() + other.minor(), amount.currency())));
        return List.copyOf(sums.values());
    }
}
