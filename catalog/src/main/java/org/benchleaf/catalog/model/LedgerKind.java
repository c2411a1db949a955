package org.benchleaf.catalog.model;

import org.benchleaf.shared.Term;

/// What happened to plants of a lot; says how the stated number changes the count.
public enum LedgerKind implements Term {
    /// So many were found, 0 or more: the count becomes the number stated.
    COUNTED("counted"),
    /// So many came in, 1 or more.
    RECEIVED("received"),
    /// So many are set aside for a customer, 1 or more, and no longer free.
    HELD("held"),
    /// So many that were set aside are free again, 1 or more.
    RELEASED("released"),
    /// So many left for a customer, 1 or more.
    SHIPPED("shipped"),
    /// So many died, were broken or stolen, 1 or more.
    LOST("lost"),
    /// So many came from another lot, or with a minus sign went to one; not 0.
    MOVED("moved");

    /// More plants than any lot holds; beyond it a number is a slip of the keyboard.
    public static final int MOST = 10_000_000;

    private final String term;

    LedgerKind(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }

    /// Whether a number can be stated for this kind.
    public boolean accepts(int stated) {
        return switch (this) {
            case COUNTED -> stated >= 0 && stated <= MOST;
            case MOVED -> stated != 0 && Math.abs((long) stated) <= MOST;
            case RECEIVED, HELD, RELEASED, SHIPPED, LOST -> stated >= 1 && stated <= MOST;
        };
    }

    /// What an accepted number adds to the count; negative when it takes away.
    ///
    /// @param stated a number that [#accepts] takes
    /// @param onHand the count before
    public int change(int stated, int onHand) {
        return switch (this) {
            case COUNTED -> stated - onHand;
            case RECEIVED, RELEASED, MOVED -> stated;
            case HELD, SHIPPED, LOST -> -stated;
        };
    }
}
