package org.benchleaf.catalog.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;

/// What happened to a lot. Numbers are plants; which ones are accepted says [LedgerKind].
public sealed interface StockEvent {
    LedgerKind kind();

    /// The number as it was given; 0 where none is.
    int stated();

    /// So many came in.
    ///
    /// @param newLot given when the lot is not in the catalog yet and begins with this entry
    record Received(int stated, Optional<NewLot> newLot) implements StockEvent {
        public Received(int stated) {
            this(stated, Optional.empty());
        }

        @Override
        public LedgerKind kind() {
            return LedgerKind.RECEIVED;
        }
    }

    /// So many were found; the count becomes this number. A count that differs gives its reason.
    record Counted(int stated) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.COUNTED;
        }
    }

    /// So many that were free are set aside; they stay in the count.
    ///
    /// @param until the moment from which they are free again without another entry; in whole seconds
    record Held(int stated, Optional<Instant> until) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.HELD;
        }
    }

    /// So many of a hold are free again.
    ///
    /// @param hold the key of the entry that held them
    record Released(int stated, String hold) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.RELEASED;
        }
    }

    /// So many left for a customer.
    ///
    /// @param hold the key of the hold they were taken from; empty when they were free
    record Shipped(int stated, Optional<String> hold) implements StockEvent {
        public Shipped(int stated) {
            this(stated, Optional.empty());
        }

        @Override
        public LedgerKind kind() {
            return LedgerKind.SHIPPED;
        }
    }

    /// So many died, were broken or stolen.
    record Lost(int stated) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.LOST;
        }
    }

    /// So many went over to another lot of the same plant.
    record Moved(int stated, String to) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.MOVED;
        }
    }

    /// The whole lot stands elsewhere now.
    ///
    /// @param place block and row
    record Placed(String place) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.MOVED;
        }

        @Override
        public int stated() {
            return 0;
        }
    }

    /// The lot can be taken from another week on.
    ///
    /// @param week empty when it is ready
    record Ready(Optional<YearWeek> week) implements StockEvent {
        @Override
        public LedgerKind kind() {
            return LedgerKind.READY;
        }

        @Override
        public int stated() {
            return 0;
        }
    }

    /// The lot looked so on that day.
    ///
    /// @param conditions at least one
    record Seen(Set<Condition> conditions, LocalDate day) implements StockEvent {
        public Seen {
            conditions = Set.copyOf(conditions);
        }

        @Override
        public LedgerKind kind() {
            return LedgerKind.SEEN;
        }

        @Override
        public int stated() {
            return 0;
        }
    }
}
