package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.rules.RuleColumn;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.catalog.rules.RuleTexts;
import org.benchleaf.catalog.rules.SaleRule;
import org.benchleaf.catalog.rules.SaleRuleBook;

/// Lists of sale rules in the database; the book of those in force is kept until another list is loaded.
final class RuleShelf {
    private static final String COLUMNS =
            Arrays.stream(RuleColumn.values()).map(RuleColumn::heading).collect(Collectors.joining(", "));
    private static final String INSERT = "INSERT INTO sale_rule (list, place, " + COLUMNS + ") VALUES (?, ?"
            + String.join("", Collections.nCopies(RuleColumn.values().length, ", ?")) + ")";
    private static final String IN_FORCE = "SELECT " + COLUMNS + " FROM sale_rule WHERE list IN"
            + " (SELECT MAX(id) FROM sale_rule_list WHERE revision <= ? GROUP BY name) ORDER BY list, place";
    /// A rule may bear on any plant, and every plant says which states the lists cover.
    private static final String NEWS = "INSERT INTO plant_change (plant, kind, revision)"
            + " SELECT serial, 'PLANT', ? FROM plant WHERE true"
            + " ON CONFLICT (plant, kind) DO UPDATE SET revision = excluded.revision";

    private final AtomicReference<Kept> kept = new AtomicReference<>(new Kept(0, SaleRuleBook.empty()));

    /// @param list the newest list that is in the book
    private record Kept(long list, SaleRuleBook book) {}

    /// The rules in force.
    SaleRuleBook book(Session session) throws SQLException {
        long newest = session.number("SELECT COALESCE(MAX(id), 0) FROM sale_rule_list");
        Kept known = kept.get();
        if (known.list() == newest) {
            return known.book();
        }
        SaleRuleBook book = bookAt(session, new CatalogRevision(Long.MAX_VALUE));
        kept.set(new Kept(newest, book));
        return book;
    }

    /// The rules that were in force in an earlier state.
    static SaleRuleBook bookAt(Session session, CatalogRevision revision) throws SQLException {
        List<SaleRule> rules = session.list(
                IN_FORCE,
                row -> {
                    Map<RuleColumn, String> cells = new EnumMap<>(RuleColumn.class);
                    for (RuleColumn column : RuleColumn.values()) {
                        cells.put(column, row.getString(column.heading()));
                    }
                    return RuleTexts.rule(cells);
                },
                revision.number());
        return SaleRuleBook.of(rules);
    }

    /// Writes a list as the newest of its name and tells readers that every plant may be judged otherwise.
    static CatalogRevision load(Session session, RuleList list, Instant now) throws SQLException {
        CatalogRevision next = new CatalogRevision(State.revision(session).number() + 1);
        long id = session.number("SELECT COALESCE(MAX(id), 0) + 1 FROM sale_rule_list");
        session.execute(
                "INSERT INTO sale_rule_list (id, name, compiled_on, revision, loaded_at) VALUES (?, ?, ?, ?, ?)",
                id,
                list.name(),
                list.compiledOn().orElseThrow().toString(),
                next.number(),
                now.toString());
        try (Batch batch = new Batch(session, INSERT)) {
            int place = 0;
            for (SaleRule rule : list.rules()) {
                Object[] values = new Object[2 + RuleColumn.values().length];
                values[0] = id;
                values[1] = place++;
                Map<RuleColumn, String> cells = RuleTexts.texts(rule);
                for (RuleColumn column : RuleColumn.values()) {
                    values[2 + column.ordinal()] = cells.getOrDefault(column, "");
                }
                batch.add(values);
            }
        }
        session.execute(NEWS, next.number());
        State.advance(session, next, now);
        return next;
    }
}
