package org.benchleaf.catalog.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;
import org.jspecify.annotations.Nullable;

/// One lot while the entries of a transaction are judged: what it was, and what they make of it.
final class LotState {
    /// A lot that was taken back with its import.
    static final Balance GONE = new Balance(0, 0);

    /// What is left of a hold.
    ///
    /// @param until ISO 8601, UTC, whole seconds
    record Held(int left, Optional<String> until) {}

    private final String lot;
    private final int plant;
    private final int item;
    private final boolean isNew;
    private final String now;
    private int count;
    private String place;
    private @Nullable String ready;
    private String conditions;
    private @Nullable String seenOn;
    private boolean different;
    private boolean held;
    private final Map<String, Held> holds = new HashMap<>();
    private final List<String> touched = new ArrayList<>();

    LotState(
            String lot,
            int plant,
            int item,
            boolean isNew,
            Instant now,
            int count,
            String place,
            @Nullable String ready,
            String conditions,
            @Nullable String seenOn) {
        this.lot = lot;
        this.plant = plant;
        this.item = item;
        this.isNew = isNew;
        this.different = isNew;
        this.now = LedgerRow.moment(now);
        this.count = count;
        this.place = place;
        this.ready = ready;
        this.conditions = conditions;
        this.seenOn = seenOn;
    }

    String lot() {
        return lot;
    }

    int plant() {
        return plant;
    }

    int item() {
        return item;
    }

    boolean isNew() {
        return isNew;
    }

    int count() {
        return count;
    }

    /// Its columns in the order of [LotShelf].
    @Nullable
    Object[] columns() {
        return new @Nullable Object[] {count, place, ready, conditions, seenOn};
    }

    Balance balance() {
        int open = holds.values().stream()
                .filter(hold -> isOpen(hold))
                .mapToInt(Held::left)
                .sum();
        return new Balance(count, open);
    }

    private boolean isOpen(Held hold) {
        return hold.until().map(end -> end.compareTo(now) > 0).orElse(true);
    }

    /// Whether what an import states of it is different now.
    boolean isDifferent() {
        return different;
    }

    /// Whether its holds are.
    boolean isHeldOtherwise() {
        return held;
    }

    void add(int change) {
        count += change;
        if (count < 0 || count > LedgerKind.MOST) {
            throw new IllegalStateException("lot " + lot + " would have " + count + " plants");
        }
        different |= change != 0;
    }

    void place(String other) {
        different |= !other.equals(place);
        place = other;
    }

    void ready(Optional<YearWeek> week) {
        String other = week.map(YearWeek::toString).orElse(null);
        different |= !java.util.Objects.equals(other, ready);
        ready = other;
    }

    /// An older look than the one known goes into the ledger and changes nothing here.
    void seen(StockEvent.Seen look) {
        String day = look.day().toString();
        if (seenOn == null || seenOn.compareTo(day) <= 0) {
            seenOn = day;
            conditions = Term.write(look.conditions());
            different = true;
        }
    }

    /// A hold as it was stored.
    void known(String key, Held hold) {
        holds.put(key, hold);
    }

    void hold(String key, int quantity, Optional<String> until) {
        set(key, new Held(quantity, until));
    }

    boolean hasEnded(String key) {
        Held hold = holds.get(key);
        return hold != null && !isOpen(hold);
    }

    /// 0 where there is no such hold.
    int leftOf(String key) {
        Held hold = holds.get(key);
        return hold == null ? 0 : hold.left();
    }

    void takeFrom(String key, int quantity) {
        Held hold = holds.get(key);
        if (hold == null || hold.left() < quantity) {
            throw new IllegalStateException("hold " + key + " has less than " + quantity);
        }
        set(key, new Held(hold.left() - quantity, hold.until()));
    }

    private void set(String key, Held hold) {
        holds.put(key, hold);
        touched.add(key);
        held = true;
    }

    /// The keys of holds that are different now.
    List<String> touchedHolds() {
        return touched.stream().distinct().toList();
    }

    Held heldBy(String key) {
        return java.util.Objects.requireNonNull(holds.get(key));
    }
}
