package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogView.Freed;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Puts the stock of plants together from items, lots and holds, three queries for any number of plants.
final class StockReader {
    private static final String ITEMS = "SELECT p.plant_key, i.number, i.size, i.form, i.gtin, i.price"
            + " FROM plant p JOIN item i ON i.plant = p.serial WHERE i.withdrawn = 0 AND p.plant_key IN (<keys>)";
    private static final String LOTS = "SELECT p.plant_key, l.item, l.lot, l.place, l.ready_week, l.on_hand,"
            + " l.conditions, l.seen_on FROM plant p JOIN lot l ON l.plant = p.serial"
            + " WHERE l.withdrawn = 0 AND p.plant_key IN (<keys>) ORDER BY l.lot";
    private static final String HOLDS = "SELECT h.lot, h.quantity, h.held_until FROM plant p"
            + " JOIN hold h ON h.plant = p.serial WHERE p.plant_key IN (<keys>)";
    private static final String PLANT_OF_LOT =
            "SELECT p.plant_key FROM lot l JOIN plant p ON p.serial = l.plant WHERE l.withdrawn = 0 AND l.lot = ?";
    private static final String ENDED = "SELECT DISTINCT p.plant_key FROM hold h JOIN plant p ON p.serial = h.plant"
            + " WHERE h.held_until > ? AND h.held_until <= ?";
    /// Stands in for a currency that is always written; stored prices carry theirs.
    private static final Currency DOLLARS = Currency.getInstance("USD");

    private final Memo<StockSize> sizes =
            new Memo<>(text -> StockSize.read(text).orThrow());
    private final Memo<ItemForm> forms =
            new Memo<>(text -> Term.read(ItemForm.class, text).orThrow());
    private final Memo<Money> prices =
            new Memo<>(text -> Money.read(text, DOLLARS).orThrow());
    private final Memo<YearWeek> weeks = new Memo<>(text -> YearWeek.read(text).orThrow());
    private final Memo<Set<Condition>> conditions =
            new Memo<>(text -> Term.readSet(Condition.class, text).orThrow());

    private final Memo<LocalDate> days = new Memo<>(LocalDate::parse);

    private final Clock clock;

    /// @param clock says which holds have ended
    StockReader(Clock clock) {
        this.clock = clock;
    }

    /// One lot with what is held of it.
    Optional<LotRecord> lot(Session session, String lot) throws SQLException {
        Optional<PlantKey> plant = session.first(PLANT_OF_LOT, row -> new PlantKey(row.getString(1)), lot);
        if (plant.isEmpty()) {
            return Optional.empty();
        }
        return read(session, List.of(plant.get())).values().stream()
                .flatMap(stock -> stock.lots().stream())
                .filter(found -> found.lot().equals(lot))
                .findFirst();
    }

    /// The plants of which holds have ended by now that had not at that moment.
    Freed freedSince(Session session, Instant since) throws SQLException {
        Instant now = clock.instant();
        return new Freed(
                now,
                Set.copyOf(session.list(
                        ENDED, row -> new PlantKey(row.getString(1)), LedgerRow.moment(since), LedgerRow.moment(now))));
    }

    private Map<String, Integer> held(Session session, Collection<PlantKey> plants) throws SQLException {
        String now = LedgerRow.moment(clock.instant());
        Map<String, Integer> held = new HashMap<>();
        Rows.forEach(session, HOLDS, plants, row -> {
            String until = row.getString(3);
            if (until == null || until.compareTo(now) > 0) {
                held.merge(row.getString(1), row.getInt(2), Integer::sum);
            }
        });
        return held;
    }

    /// The stock of these plants, in the order asked; empty for a plant without items.
    Map<PlantKey, PlantStock> read(Session session, Collection<PlantKey> keys) throws SQLException {
        Map<PlantKey, List<ItemRecord>> items = new HashMap<>();
        Rows.forEach(session, ITEMS, keys, row -> {
            PlantKey plant = new PlantKey(row.getString(1));
            items.computeIfAbsent(plant, key -> new ArrayList<>())
                    .add(new ItemRecord(
                            new ItemKey(plant, row.getInt(2)),
                            sizes.of(row.getString(3)),
                            forms.of(row.getString(4)),
                            Optional.ofNullable(row.getString(5)).map(Gtin::new),
                            Optional.ofNullable(row.getString(6)).map(prices::of)));
        });
        Map<String, Integer> held = held(session, items.keySet());
        Map<PlantKey, List<LotRecord>> lots = new HashMap<>();
        Rows.forEach(session, LOTS, items.keySet(), row -> {
            PlantKey plant = new PlantKey(row.getString(1));
            lots.computeIfAbsent(plant, key -> new ArrayList<>())
                    .add(new LotRecord(
                            row.getString(3),
                            new ItemKey(plant, row.getInt(2)),
                            row.getString(4),
                            Optional.ofNullable(row.getString(5)).map(weeks::of),
                            row.getInt(6),
                            held.getOrDefault(row.getString(3), 0),
                            conditions.of(row.getString(7)),
                            Optional.ofNullable(row.getString(8)).map(days::of)));
        });
        Map<PlantKey, PlantStock> stock = new LinkedHashMap<>();
        for (PlantKey key : keys) {
            stock.put(key, new PlantStock(key, items.getOrDefault(key, List.of()), lots.getOrDefault(key, List.of())));
        }
        return stock;
    }
}
