package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.NewLot;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.code.ItemKey;
import org.jspecify.annotations.Nullable;

/// The lots that the entries of one transaction speak of: read once, changed in memory, written once.
final class LotShelf {
    private static final String LOTS = "SELECT lot, plant, item, on_hand, place, ready_week, conditions, seen_on"
            + " FROM lot WHERE withdrawn = 0 AND lot IN (<keys>)";
    private static final String HOLDS = "SELECT hold, lot, quantity, held_until FROM hold WHERE lot IN (<keys>)";
    private static final String OTHER_HOLDS = "SELECT hold FROM hold WHERE hold IN (<keys>)";
    private static final String ITEMS = "SELECT p.plant_key, p.serial, i.number FROM plant p"
            + " JOIN item i ON i.plant = p.serial"
            + " WHERE p.withdrawn = 0 AND i.withdrawn = 0 AND p.plant_key IN (<keys>)";

    private static final String CHANGE = "UPDATE lot SET on_hand = ?, place = ?, ready_week = ?, conditions = ?,"
            + " seen_on = ?, moved = ? WHERE lot = ?";
    /// A lot that was taken back with its import may begin again.
    private static final String BEGIN = "INSERT INTO lot (on_hand, place, ready_week, conditions, seen_on, moved, lot,"
            + " plant, item) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (lot) DO UPDATE SET"
            + " on_hand = excluded.on_hand, place = excluded.place, ready_week = excluded.ready_week,"
            + " conditions = excluded.conditions, seen_on = excluded.seen_on, moved = excluded.moved,"
            + " plant = excluded.plant, item = excluded.item, withdrawn = 0";
    private static final String HOLD = "INSERT INTO hold (hold, lot, plant, quantity, held_until)"
            + " VALUES (?, ?, ?, ?, ?) ON CONFLICT (hold) DO UPDATE SET quantity = excluded.quantity";
    private static final String NO_HOLD = "DELETE FROM hold WHERE hold = ?";

    private final Instant now;
    private final Map<String, LotState> lots = new HashMap<>();
    private final Map<ItemKey, Integer> serials = new HashMap<>();
    private final Set<String> holds = new HashSet<>();

    private LotShelf(Instant now) {
        this.now = now;
    }

    static LotShelf read(Session session, List<LedgerEntry> entries, Instant now) throws SQLException {
        LotShelf shelf = new LotShelf(now);
        Set<String> numbers = new LinkedHashSet<>();
        Set<String> plants = new HashSet<>();
        Set<String> holds = new HashSet<>();
        for (LedgerEntry entry : entries) {
            numbers.add(entry.lot());
            switch (entry.event()) {
                case StockEvent.Moved moved -> numbers.add(moved.to());
                case StockEvent.Received received ->
                    received.newLot()
                            .ifPresent(lot -> plants.add(lot.item().plant().text()));
                case StockEvent.Released released -> holds.add(released.hold());
                case StockEvent.Shipped shipped -> shipped.hold().ifPresent(holds::add);
                default -> {}
            }
        }
        shelf.readLots(session, numbers);
        Rows.forEach(session, OTHER_HOLDS, holds, row -> shelf.holds.add(row.getString(1)));
        Rows.forEach(
                session,
                ITEMS,
                plants,
                row -> shelf.serials.put(
                        ItemKey.read(row.getString(1) + "-" + row.getInt(3)).orThrow(), row.getInt(2)));
        return shelf;
    }

    private void readLots(Session session, Collection<String> numbers) throws SQLException {
        Rows.forEach(
                session,
                LOTS,
                numbers,
                row -> lots.put(
                        row.getString(1),
                        new LotState(
                                row.getString(1),
                                row.getInt(2),
                                row.getInt(3),
                                false,
                                now,
                                row.getInt(4),
                                row.getString(5),
                                row.getString(6),
                                row.getString(7),
                                row.getString(8))));
        Rows.forEach(session, HOLDS, lots.keySet(), row -> {
            LotState lot = lots.get(row.getString(2));
            if (lot != null) {
                lot.known(row.getString(1), new LotState.Held(row.getInt(3), Optional.ofNullable(row.getString(4))));
            }
        });
    }

    Optional<LotState> find(String lot) {
        return Optional.ofNullable(lots.get(lot));
    }

    /// Whether there is such a hold, though not of the lot at hand.
    boolean holdIsElsewhere(String hold) {
        return holds.contains(hold);
    }

    /// A lot that was not there.
    ///
    /// @return empty when the catalog has no such item
    Optional<LotState> begin(String number, NewLot begun) {
        Integer plant = serials.get(begun.item());
        if (plant == null) {
            return Optional.empty();
        }
        LotState lot = new LotState(
                number,
                plant,
                begun.item().number(),
                true,
                now,
                0,
                begun.place(),
                begun.ready().map(Object::toString).orElse(null),
                "",
                null);
        lots.put(number, lot);
        return Optional.of(lot);
    }

    /// The plants of which something is different now.
    Set<Integer> changedPlants() {
        Set<Integer> plants = new HashSet<>();
        lots.values().stream()
                .filter(lot -> lot.isDifferent() || lot.isHeldOtherwise())
                .forEach(lot -> plants.add(lot.plant()));
        return plants;
    }

    /// Writes what is different.
    ///
    /// @param revision the state that this makes
    void write(Session session, long revision) throws SQLException {
        try (Batch change = new Batch(session, CHANGE);
                Batch begin = new Batch(session, BEGIN)) {
            for (LotState lot : lots.values()) {
                if (lot.isDifferent()) {
                    @Nullable Object[] values = lot.columns();
                    if (lot.isNew()) {
                        begin.add(
                                values[0],
                                values[1],
                                values[2],
                                values[3],
                                values[4],
                                revision,
                                lot.lot(),
                                lot.plant(),
                                lot.item());
                    } else {
                        change.add(values[0], values[1], values[2], values[3], values[4], revision, lot.lot());
                    }
                }
            }
        }
    }

    /// Writes what is left of holds; after the entries, for a hold is called by the key of one.
    void writeHolds(Session session) throws SQLException {
        try (Batch write = new Batch(session, HOLD);
                Batch remove = new Batch(session, NO_HOLD)) {
            for (LotState lot : lots.values()) {
                for (String key : lot.touchedHolds()) {
                    LotState.Held hold = lot.heldBy(key);
                    if (hold.left() == 0) {
                        remove.add(key);
                    } else {
                        write.add(
                                key,
                                lot.lot(),
                                lot.plant(),
                                hold.left(),
                                hold.until().orElse(null));
                    }
                }
            }
        }
    }
}
