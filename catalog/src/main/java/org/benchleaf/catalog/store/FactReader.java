package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.fact.Source;

/// Reads the facts of many plants, each plant's as one text: the hot path of every answer.
final class FactReader {
    /// Between the facts of a plant, and between the parts of a fact; no stored value holds them.
    static final char BETWEEN_FACTS = '\u001e';

    static final char BETWEEN_PARTS = '\u001f';

    /// The facts that a plant states itself.
    ///
    /// @param chosen those shown
    /// @param others those of sources not chosen, by attribute and source
    record Shelf(List<Fact<?>> chosen, List<Fact<?>> others) {
        static final Shelf EMPTY = new Shelf(List.of(), List.of());
    }

    private static final Comparator<Fact<?>> BY_ATTRIBUTE_AND_SOURCE = Comparator.<Fact<?>, String>comparing(
                    fact -> fact.attribute().id())
            .thenComparing(fact -> fact.source().text());

    private final String query;
    private final FactValues values;
    private final Sources sources;

    FactReader(Dialect dialect, FactValues values, Sources sources) {
        this.values = values;
        this.sources = sources;
        String between = " || '" + BETWEEN_PARTS + "' || ";
        String fact = "chosen" + between + "source" + between + "attribute" + between + "value";
        this.query = "SELECT plant, " + dialect.joined(fact, BETWEEN_FACTS)
                + " FROM fact WHERE plant IN (<keys>) GROUP BY plant";
    }

    /// The facts of plants by serial; a plant that states none is not among them.
    Map<Integer, Shelf> read(Session session, Collection<Integer> plants) throws SQLException {
        Map<Integer, Shelf> shelves = new HashMap<>();
        Rows.forEach(session, query, plants, row -> shelves.put(row.getInt(1), shelf(session, row.getString(2))));
        return shelves;
    }

    private Shelf shelf(Session session, String text) throws SQLException {
        List<Fact<?>> chosen = new ArrayList<>();
        List<Fact<?>> others = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            int found = text.indexOf(BETWEEN_FACTS, start);
            int end = found < 0 ? text.length() : found;
            int sourceAt = text.indexOf(BETWEEN_PARTS, start) + 1;
            int attributeAt = text.indexOf(BETWEEN_PARTS, sourceAt) + 1;
            int valueAt = text.indexOf(BETWEEN_PARTS, attributeAt) + 1;
            Source source = sources.of(session, Integer.parseInt(text, sourceAt, attributeAt - 1, 10));
            String attribute = text.substring(attributeAt, valueAt - 1);
            List<Fact<?>> side = text.charAt(start) == '1' ? chosen : others;
            values.fact(attribute, text.substring(valueAt, end), source).ifPresent(side::add);
            start = end + 1;
        }
        others.sort(BY_ATTRIBUTE_AND_SOURCE);
        return new Shelf(chosen, others);
    }
}
