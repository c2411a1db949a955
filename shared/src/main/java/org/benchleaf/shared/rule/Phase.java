package org.benchleaf.shared.rule;

/// Where a day stands in the life of a rule.
public enum Phase {
    /// It holds from a later day.
    COMING,
    IN_FORCE,
    /// It held until an earlier day.
    ENDED
}
