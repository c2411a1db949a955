package org.benchleaf.search.index;

import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.Standing;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.StockSize;

/// The stock of all plants as of one revision, packed for a pass over all of them: for each plant its lots, item by
/// item. Not changed once published; [#with] gives a new state that shares what stayed the same.
///
/// It only proposes: what is shown is read from the catalog and judged from there.
final class StockColumns {
    /// An item without a price.
    static final long NO_PRICE = -1;

    /// So many sizes are kept ready; a shop sells in fewer.
    private static final int MOST_SIZES = 24;

    private static final int MOST_WEEKS = 4;

    private final Shared shared;
    private final int[] starts;
    private final int[] lengths;
    private final int used;
    private final ConcurrentMap<Integer, byte[]> standings = new ConcurrentHashMap<>();
    private final ConcurrentMap<Integer, int[]> firsts = new ConcurrentHashMap<>();
    private final ConcurrentMap<Long, int[]> mosts = new ConcurrentHashMap<>();

    /// @param starts first lot of each slot
    /// @param lengths how many lots each slot has
    /// @param used lots in use and no longer in use
    StockColumns(Shared shared, int[] starts, int[] lengths, int used) {
        this.shared = shared;
        this.starts = starts;
        this.lengths = lengths;
        this.used = used;
    }

    static StockColumns empty() {
        return new StockColumns(new Shared(new Codes<>(), new Codes<>(), Lots.ofSize(1024)), new int[0], new int[0], 0);
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
            lots = lots.room(
                    end + slot.stock().items().size() + slot.stock().lots().size());
            end = shared.append(lots, end, slot.stock());
            newStarts[slot.slot()] = start;
            newLengths[slot.slot()] = end - start;
        }
        return new StockColumns(shared.with(lots), newStarts, newLengths, end).withoutGaps();
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
        return new StockColumns(shared.with(fresh), newStarts, lengths, end);
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

    /// Where the lots of a size begin for each slot, -1 where a plant has none of it; [StockWish#ANY] for all lots.
    ///
    /// Worked out when a size is first asked for, then kept with this state.
    int[] firstOf(int size) {
        if (firsts.size() > MOST_SIZES) {
            firsts.clear();
        }
        return firsts.computeIfAbsent(size, this::findFirst);
    }

    private int[] findFirst(int size) {
        char[] sizes = shared.lots.size();
        int[] first = new int[starts.length];
        for (int slot = 0; slot < first.length; slot++) {
            int lot = starts[slot];
            int end = lot + lengths[slot];
            while (lot < end && size != StockWish.ANY && sizes[lot] != size) {
                lot++;
            }
            first[slot] = lot < end ? lot : -1;
        }
        return first;
    }

    /// The most of one item of a size that each slot has ready by a week; [StockWish#ANY] for any size.
    ///
    /// Worked out when first asked for, then kept with this state.
    int[] mostOf(int size, int by) {
        if (mosts.size() > MOST_SIZES) {
            mosts.clear();
        }
        return mosts.computeIfAbsent((long) by << 32 | size & 0xFFFF_FFFFL, fresh -> findMost(size, by));
    }

    private int[] findMost(int size, int by) {
        Lots lots = shared.lots;
        int[] most = new int[starts.length];
        for (int slot = 0; slot < most.length; slot++) {
            int best = 0;
            int sum = 0;
            int item = -1;
            for (int lot = starts[slot], end = lot + lengths[slot]; lot < end; lot++) {
                if (lots.item()[lot] != item) {
                    item = lots.item()[lot];
                    sum = 0;
                }
                if ((size == StockWish.ANY || lots.size()[lot] == size) && lots.ready()[lot] <= by) {
                    sum += lots.count()[lot];
                    best = Math.max(best, sum);
                }
            }
            most[slot] = best;
        }
        return most;
    }

    /// What being to be had adds to each slot's rank in a week: 2 free now, 1 coming on, 0 neither.
    byte[] standings(int now) {
        if (standings.size() > MOST_WEEKS) {
            standings.clear();
        }
        return standings.computeIfAbsent(now, this::findStandings);
    }

    private byte[] findStandings(int now) {
        byte[] found = new byte[starts.length];
        for (int slot = 0; slot < found.length; slot++) {
            Standing best = Standing.NONE;
            for (int lot = starts[slot]; lot < end(slot); lot++) {
                if (shared.lots.count()[lot] > 0) {
                    Standing standing = shared.lots.ready()[lot] <= now ? Standing.FREE_NOW : Standing.COMING_ON;
                    best = standing.compareTo(best) < 0 ? standing : best;
                }
            }
            found[slot] = (byte) (Standing.NONE.ordinal() - best.ordinal());
        }
        return found;
    }

    /// How many sizes there are; their numbers are 0 to one less.
    int sizes() {
        return shared.sizes.count();
    }

    StockSize size(int code) {
        return shared.sizes.value(code);
    }

    int start(int slot) {
        return slot < starts.length ? starts[slot] : 0;
    }

    int end(int slot) {
        return slot < starts.length ? starts[slot] + lengths[slot] : 0;
    }

    /// A plant's slot and its stock.
    record Slot(int slot, PlantStock stock) {}

    /// What states share: entries past a state's end belong to later ones.
    record Shared(Codes<StockSize> sizes, Codes<Currency> currencies, Lots lots) {
        Shared with(Lots others) {
            return new Shared(sizes, currencies, others);
        }

        /// Writes the lots of a plant, item by item; an item without lots is one without a count.
        ///
        /// @param into has room for as many as the plant has items and lots
        /// @return behind the last
        int append(Lots into, int start, PlantStock stock) {
            int end = start;
            int number = 0;
            for (ItemRecord item : stock.items()) {
                int first = end;
                long price = item.price().map(money -> money.minor()).orElse(NO_PRICE);
                int currency = item.price()
                        .map(money -> currencies.give(money.currency()))
                        .orElse(Codes.NONE);
                int size = sizes.give(item.size());
                for (LotRecord lot : stock.lots()) {
                    if (lot.item().equals(item.key())) {
                        int ready = lot.ready().map(StockColumns::week).orElse(0);
                        into.put(end++, number, size, ready, lot.free(), price, currency);
                    }
                }
                if (end == first) {
                    into.put(end++, number, size, 0, 0, price, currency);
                }
                number++;
            }
            return end;
        }
    }
}
