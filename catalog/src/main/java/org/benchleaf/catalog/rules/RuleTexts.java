package org.benchleaf.catalog.rules;

import java.util.Map;

/// A rule as texts, one a column, for a database.
public final class RuleTexts {
    private RuleTexts() {}

    /// @return a text for every column; empty where nothing is said
    public static Map<RuleColumn, String> texts(SaleRule rule) {
        return RuleCells.write(rule);
    }

    /// @throws IllegalStateException when the texts were not written by [#texts]
    public static SaleRule rule(Map<RuleColumn, String> texts) {
        try {
            return RuleCells.read(texts);
        } catch (RuleCells.Unreadable damaged) {
            throw new IllegalStateException("a stored sale rule cannot be read: " + damaged.problem(), damaged);
        }
    }
}
