package org.benchleaf.search.index;

import java.util.IdentityHashMap;
import java.util.Map;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Facts;

/// Remembers the stored form of facts while many plants are indexed: the catalog hands over the same value for
/// the same text, so that each is written out once. Used by one thread.
final class FactTexts {
    /// Texts remembered of one column; those beyond are written each time.
    private static final int MOST = 10_000;

    private final Map<Object, Map<Object, String>> columns = new IdentityHashMap<>();

    /// The stored form of a fact; empty when the plant does not have it.
    <T> String of(Facts facts, Attribute<T> attribute) {
        return facts.fact(attribute)
                .map(fact -> {
                    Map<Object, String> known = columns.computeIfAbsent(attribute, fresh -> new IdentityHashMap<>());
                    String text = known.get(fact.value());
                    if (text == null) {
                        text = fact.text();
                        if (known.size() < MOST) {
                            known.put(fact.value(), text);
                        }
                    }
                    return text;
                })
                .orElse("");
    }
}
