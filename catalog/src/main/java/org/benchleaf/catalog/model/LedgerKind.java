package org.benchleaf.catalog.model;

import org.benchleaf.shared.Term;

/// What happened to plants of a lot; says which numbers can be stated for it.
public enum LedgerKind implements Term {
    /// So many were found, 0 or more: the count becomes the number stated.
    COUNTED("counted"),
    /// So many came in, 1 or more.
    RECEIVED("received"),
    /// So many are set aside for a customer, 1 or more: still in the count, no longer free.
    HELD("held"),
    /// So many that were set aside are free again, 1 or more.
    RELEASED("released"),
    /// So many left for a customer, 1 or more.
    SHIPPED("shipped"),
    /// So many died, were broken or stolen, 1 or more.
    LOST("lost"),
    /// So many went over to another lot, 1 or more; or the whole lot to another place, 0.
    MOVED("moved"),
    /// The week from which it can be taken is another one.
    READY("ready"),
    /// It was looked at, and looked so.
    SEEN("seen");

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
            case COUNTED, MOVED -> stated >= 0 && stated <= MOST;
            case READY, SEEN -> stated == 0;
            case RECEIVED, HELD, RELEASED, SHIPPED, LOST -> stated >= 1 && stated <= MOST;
        };
    }
}
