package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.jspecify.annotations.Nullable;

/// Writes what a plan says of lots: items by plant, size and form; counts as entries of the ledger,
/// only where they differ.
final class StockWriter {
    private static final int MOST_ITEMS = 999;

    private static final String OLD_ITEMS =
            "SELECT plant, number, size, form, gtin, price, withdrawn FROM item WHERE plant IN (<keys>)";
    private static final String ITEM = "INSERT INTO item (plant, number, size, form, gtin, price)"
            + " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (plant, number) DO UPDATE SET gtin = excluded.gtin,"
            + " price = excluded.price, withdrawn = 0";
    private static final String OLD_LOTS = "SELECT lot, plant, item, place, ready_week, on_hand, conditions, seen_on,"
            + " withdrawn FROM lot WHERE lot IN (<keys>)";
    private static final String LOT = "INSERT INTO lot"
            + " (lot, plant, item, place, ready_week, on_hand, conditions, seen_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (lot) DO UPDATE SET plant = excluded.plant, item = excluded.item, place = excluded.place,"
            + " ready_week = excluded.ready_week, on_hand = excluded.on_hand, conditions = excluded.conditions,"
            + " seen_on = excluded.seen_on, withdrawn = 0";

    private record Product(int plant, String size, String form) {}

    private record Item(int plant, int number, Optional<String> gtin, Optional<String> price, boolean withdrawn) {
        List<@Nullable String> image() {
            return Arrays.asList(orNull(gtin), orNull(price));
        }
    }

    private record Lot(
            int plant,
            int item,
            String place,
            Optional<String> ready,
            int onHand,
            String conditions,
            Optional<String> seenOn,
            boolean withdrawn) {
        /// In the order of [ImportUndo].
        List<@Nullable String> image() {
            return Arrays.asList(
                    Integer.toString(item), place, orNull(ready), Integer.toString(onHand), conditions, orNull(seenOn));
        }
    }

    private final Session session;
    private final String file;
    private final PlantResolver plants;
    private final long revision;
    private final Instant now;
    private final ChangeLog log;
    private final BitSet changed = new BitSet();
    private final Map<Product, Item> items = new HashMap<>();
    private final Map<Product, Item> itemsBefore = new HashMap<>();
    private final Map<Product, Item> itemsChanged = new LinkedHashMap<>();
    private final Map<Integer, Integer> lastItem = new HashMap<>();
    private final Map<String, Lot> lots = new HashMap<>();

    /// @param file the spreadsheet, named in the ledger
    StockWriter(Session session, String file, PlantResolver plants, long revision, Instant now, ChangeLog log) {
        this.log = log;
        this.session = session;
        this.file = file;
        this.plants = plants;
        this.revision = revision;
        this.now = now;
    }

    /// Writes the items, lots and entries of some rows.
    ///
    /// @throws ImportRefused when a row names no plant of the catalog, gives a lot to another plant, or
    ///     needs a thousandth item of one plant
    void write(List<LotDraft> drafts) throws SQLException {
        items.clear();
        itemsBefore.clear();
        itemsChanged.clear();
        lastItem.clear();
        lots.clear();
        Map<String, Integer> serials = plants.serials(drafts);
        Set<Integer> plantsOfLots = new HashSet<>();
        for (LotDraft draft : drafts) {
            plantsOfLots.add(plantOf(draft, serials));
        }
        load(plantsOfLots, drafts);
        Map<String, Lot> before = new HashMap<>(lots); // not Map.copyOf: numbers that follow each other clash there
        for (LotDraft draft : drafts) {
            Item item = item(draft, plantOf(draft, serials));
            lots.compute(draft.lot(), (number, old) -> lot(draft, item, Optional.ofNullable(old)));
        }
        itemsChanged.keySet().forEach(product -> changed.set(product.plant()));
        writeItems();
        Map<String, Lot> different = new LinkedHashMap<>();
        drafts.forEach(draft -> different.put(draft.lot(), lots.get(draft.lot())));
        different.entrySet().removeAll(before.entrySet());
        writeLots(different, before);
        different.values().forEach(lot -> changed.set(lot.plant()));
    }

    /// The plants whose stock is different now.
    Set<Integer> news() {
        return changed.stream().boxed().collect(Collectors.toCollection(HashSet::new));
    }

    private static int plantOf(LotDraft draft, Map<String, Integer> serials) {
        Integer serial = serials.get(
                draft.plant().map(PlantKey::text).orElse(draft.name().toString()));
        if (serial == null) {
            throw new ImportRefused(
                    draft.place(),
                    Problem.of("lot.plant.unknown", draft.name().toString())
                            .with("lot", draft.lot())
                            .with("key", draft.plant().map(Object::toString).orElse("")));
        }
        return serial;
    }

    private void load(Set<Integer> plantsOfLots, List<LotDraft> drafts) throws SQLException {
        Rows.forEach(session, OLD_ITEMS, plantsOfLots, row -> {
            int plant = row.getInt(1);
            int number = row.getInt(2);
            items.put(
                    new Product(plant, row.getString(3), row.getString(4)),
                    new Item(
                            plant,
                            number,
                            Optional.ofNullable(row.getString(5)),
                            Optional.ofNullable(row.getString(6)),
                            row.getInt(7) == 1));
            lastItem.merge(plant, number, Math::max);
        });
        List<String> numbers = drafts.stream().map(LotDraft::lot).distinct().toList();
        Rows.forEach(
                session,
                OLD_LOTS,
                numbers,
                row -> lots.put(
                        row.getString(1),
                        new Lot(
                                row.getInt(2),
                                row.getInt(3),
                                row.getString(4),
                                Optional.ofNullable(row.getString(5)),
                                row.getInt(6),
                                row.getString(7),
                                Optional.ofNullable(row.getString(8)),
                                row.getInt(9) == 1)));
    }

    /// The item of a row; a price or trade number that the row leaves empty stays as it was.
    private Item item(LotDraft draft, int plant) {
        Product product =
                new Product(plant, draft.size().toString(), draft.form().term());
        Item old = items.get(product);
        int number;
        if (old != null) {
            number = old.number();
        } else {
            number = lastItem.merge(plant, 1, Integer::sum);
        }
        if (number > MOST_ITEMS) {
            throw new ImportRefused(
                    draft.place(),
                    Problem.of("item.numbers.used.up", draft.name().toString()));
        }
        Item item = new Item(
                plant,
                number,
                draft.gtin().map(Object::toString).or(() -> shown(old).flatMap(Item::gtin)),
                draft.price().map(Object::toString).or(() -> shown(old).flatMap(Item::price)),
                false);
        if (!item.equals(old)) {
            items.put(product, item);
            if (old != null) {
                itemsBefore.putIfAbsent(product, old);
            }
            itemsChanged.put(product, item);
        }
        return item;
    }

    /// An item taken back with its import says nothing any more.
    private static Optional<Item> shown(@Nullable Item old) {
        return Optional.ofNullable(old).filter(item -> !item.withdrawn());
    }

    /// The lot as the row states it. It may have been potted up into another size, but never becomes
    /// another plant: that is a number used twice. What was seen stays when the row says nothing of it.
    private static Lot lot(LotDraft draft, Item item, Optional<Lot> old) {
        if (old.isPresent() && !old.get().withdrawn() && old.get().plant() != item.plant()) {
            throw new ImportRefused(
                    draft.place(),
                    Problem.of("lot.other.plant", draft.lot())
                            .with("name", draft.name().toString()));
        }
        boolean seen = !draft.conditions().isEmpty() || draft.seenOn().isPresent();
        return new Lot(
                item.plant(),
                item.number(),
                draft.where(),
                draft.ready().map(YearWeek::toString),
                draft.count(),
                seen || old.isEmpty() || old.get().withdrawn()
                        ? Term.write(draft.conditions())
                        : old.get().conditions(),
                seen || old.isEmpty() || old.get().withdrawn()
                        ? draft.seenOn().map(Object::toString)
                        : old.get().seenOn(),
                false);
    }

    private void writeItems() throws SQLException {
        try (Batch batch = new Batch(session, ITEM)) {
            for (Map.Entry<Product, Item> entry : itemsChanged.entrySet()) {
                Item item = entry.getValue();
                batch.add(
                        item.plant(),
                        item.number(),
                        entry.getKey().size(),
                        entry.getKey().form(),
                        orNull(item.gtin()),
                        orNull(item.price()));
                log.add(RowChange.item(
                        item.plant(),
                        item.number(),
                        entry.getKey().size() + " " + entry.getKey().form(),
                        shown(itemsBefore.get(entry.getKey())).map(Item::image),
                        item.image()));
            }
        }
    }

    private void writeLots(Map<String, Lot> different, Map<String, Lot> before) throws SQLException {
        try (Batch batch = new Batch(session, LOT)) {
            for (Map.Entry<String, Lot> entry : different.entrySet()) {
                Lot lot = entry.getValue();
                batch.add(
                        entry.getKey(),
                        lot.plant(),
                        lot.item(),
                        lot.place(),
                        orNull(lot.ready()),
                        lot.onHand(),
                        lot.conditions(),
                        orNull(lot.seenOn()));
                log.add(RowChange.lot(
                        lot.plant(),
                        entry.getKey(),
                        Optional.ofNullable(before.get(entry.getKey()))
                                .filter(old -> !old.withdrawn())
                                .map(Lot::image),
                        lot.image()));
            }
        }
        try (LedgerEntries entries = new LedgerEntries(session, now)) {
            for (Map.Entry<String, Lot> entry : different.entrySet()) {
                String lot = entry.getKey();
                int count = entry.getValue().onHand();
                Optional<Integer> counted = Optional.ofNullable(before.get(lot)).map(Lot::onHand);
                if (counted.isEmpty() || counted.get() != count) {
                    entries.add(LedgerRow.counted(
                            lot,
                            count - counted.orElse(0),
                            count,
                            now,
                            "import",
                            file,
                            "import:" + revision + ":" + lot));
                }
            }
        }
    }

    private static @Nullable String orNull(Optional<String> text) {
        return text.orElse(null);
    }
}
