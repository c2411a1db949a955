package org.benchleaf.search.index;

import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.StockSize;

/// The stock of all plants as of one revision, packed for a pass over all of them: for each plant its lots, item by
/// item. Not changed once published; [#with] gives a new state that shares what stayed the same.
///
/// It only proposes: what is shown is read from the catalog and judged from there.
final class StockColumns {
    /// An item without a price.
    static final long NO_PRICE = -1;

    private final Shared shared;
    private final int[] starts;
    private final int[] lengths;
    private final int used;

    private StockColumns(Shared shared, int[] starts, int[] lengths, int used) {
        this.shared = shared;
        this.starts = starts;
        this.lengths = lengths;
        this.used = used;
    }

    static StockColumns empty() {
        return new StockColumns(
                new Shared(new Codes<>(), new Codes<>(), Lots.ofSize(1024)), new int[0], new int[0], 0);
    }

    /// These stocks in the place of the former ones. Called by one thread at a time, on the newest state only.
    ///
    /// @param slots how many plants there are
    /// @param changed slot and stock, each plant once
    StockColumns with(int slots, List<Slot> changed) {
        int[] newStarts = Arrays.copyOf(starts, Math.max(slots, starts.length));
        int[] newLengths = Arrays.copyOf(lengths, newStarts.length);
        Lots lots = shared.lots;
        int end = used;
        for (Slot slot : changed) {
            int start = end;
            int item = 0;
            for (ItemRecord record : slot.stock().items()) {
                end = append(lots = lots.room(end + 1 + slot.stock().lots().size()), end, item++, record, slot.stock());
            }
            newStarts[slot.slot()] = start;
            newLengths[slot.slot()] = end - start;
        }
        return new StockColumns(new Shared(shared.sizes, shared.currencies, lots), newStarts, newLengths, end)
                .withoutGaps();
    }

    private int append(Lots lots, int start, int item, ItemRecord record, PlantStock stock) {
        int end = start;
        long price = record.price().map(money -> money.minor()).orElse(NO_PRICE);
        int currency =
                record.price().map(money -> shared.currencies.give(money.currency())).orElse(Codes.NONE);
        int size = shared.sizes.give(record.size());
        for (LotRecord lot : stock.lots()) {
            if (lot.item().equals(record.key())) {
                lots.put(end++, item, size, lot.ready().map(StockColumns::week).orElse(0), lot.count(), price, currency);
            }
        }
        if (end == start) {
            lots.put(end++, item, size, 0, 0, price, currency);
        }
        return end;
    }

    /// Copies what is in use once more than half is not.
    private StockColumns withoutGaps() {
        int live = Arrays.stream(lengths).sum();
        if (used < 2 * live + 4096) {
            return this;
        }
        Lots fresh = Lots.ofSize(live + live / 4 + 1024);
        int[] newStarts = new int[starts.length];
        int end = 0;
        for (int slot = 0; slot < starts.length; slot++) {
            newStarts[slot] = end;
            shared.lots.copyTo(fresh, starts[slot], end, lengths[slot]);
            end += lengths[slot];
        }
        return new StockColumns(new Shared(shared.sizes, shared.currencies, fresh), newStarts, lengths, end);
    }

    /// A week as a number that sorts as weeks do; 0 is ready.
    static int week(YearWeek week) {
        return week.year() * 100 + week.week();
    }

    int sizeCode(StockSize size) {
        return shared.sizes.find(size);
    }

    int currencyCode(Currency currency) {
        return shared.currencies.find(currency);
    }

    Lots lots() {
        return shared.lots;
    }

    int start(int slot) {
        return slot < starts.length ? starts[slot] : 0;
    }

    int length(int slot) {
        return slot < lengths.length ? lengths[slot] : 0;
    }

    /// A plant's slot and its stock.
    record Slot(int slot, PlantStock stock) {}

    /// What states share: entries past a state's end belong to later ones.
    private record Shared(Codes<StockSize> sizes, Codes<Currency> currencies, Lots lots) {}

}
