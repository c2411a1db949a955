package org.benchleaf.search.need;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.stock.StockSize;

/// What a run of words was taken for.
///
/// @param end where the run ends
/// @param wishes what it asks
/// @param notes how doubtful words were taken
/// @param stock what it adds to the one wish for stock
/// @param manner what it says about other wishes
/// @param weight how much each of its wishes counts
/// @param others what the words may mean as well
record Taken(
        int end,
        List<Wish> wishes,
        List<Note> notes,
        StockPart stock,
        Manner manner,
        double weight,
        List<List<Wish>> others) {
    static Taken of(int end, Wish... wishes) {
        return new Taken(end, List.of(wishes), List.of(), StockPart.NONE, Manner.PLAIN, 1, List.of());
    }

    static Taken of(int end, List<Wish> wishes) {
        return new Taken(end, List.copyOf(wishes), List.of(), StockPart.NONE, Manner.PLAIN, 1, List.of());
    }

    static Taken ofStock(int end, StockPart stock) {
        return new Taken(end, List.of(), List.of(), stock, Manner.PLAIN, 1, List.of());
    }

    static Taken ofManner(int end, Manner manner) {
        return new Taken(end, List.of(), List.of(), StockPart.NONE, manner, 1, List.of());
    }

    Taken with(Note note) {
        List<Note> more = new java.util.ArrayList<>(notes);
        more.add(note);
        return new Taken(end, wishes, List.copyOf(more), stock, manner, weight, others);
    }

    Taken weighing(double each) {
        return new Taken(end, wishes, notes, stock, manner, each, others);
    }

    /// With another meaning to offer.
    Taken or(List<Wish> other) {
        List<List<Wish>> more = new java.util.ArrayList<>(others);
        more.add(List.copyOf(other));
        return new Taken(end, wishes, notes, stock, manner, weight, List.copyOf(more));
    }

    /// What words such as `if possible` do to the wishes beside them.
    enum Manner {
        PLAIN,
        PERHAPS_BEFORE,
        PERHAPS_AFTER,
        MUST_AFTER,
        STRONG_BEFORE,
        STRONG_AFTER
    }

    /// A part of the wish for stock.
    record StockPart(Optional<Integer> count, Optional<StockSize> size, Optional<YearWeek> by) {
        static final StockPart NONE = new StockPart(Optional.empty(), Optional.empty(), Optional.empty());

        static StockPart by(YearWeek week) {
            return new StockPart(Optional.empty(), Optional.empty(), Optional.of(week));
        }

        boolean isNothing() {
            return equals(NONE);
        }

        /// These parts, and what they lack from others.
        StockPart or(StockPart others) {
            return new StockPart(count.or(others::count), size.or(others::size), by.or(others::by));
        }
    }
}
