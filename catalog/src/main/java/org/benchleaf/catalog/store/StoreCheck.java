package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.shared.Problem;
import org.jdbi.v3.core.Handle;

/// Looks through the whole catalog for what must never be: damage, counts that are not their ledger's sum, facts that
/// cannot be read, attributes without exactly one chosen fact.
record StoreCheck(Dialect dialect) {
    private static final String COUNTS = "SELECT l.lot, l.on_hand, COALESCE(SUM(e.quantity), 0) AS entries FROM lot l"
            + " LEFT JOIN ledger e ON e.lot = l.lot GROUP BY l.lot, l.on_hand"
            + " HAVING l.on_hand <> COALESCE(SUM(e.quantity), 0) ORDER BY l.lot";
    private static final String CHOICES = "SELECT p.plant_key, f.attribute, SUM(f.chosen) FROM fact f"
            + " JOIN plant p ON p.serial = f.plant GROUP BY p.plant_key, f.attribute HAVING SUM(f.chosen) <> 1"
            + " ORDER BY p.plant_key, f.attribute";
    private static final String VALUES =
            "SELECT attribute, value, COUNT(*) FROM fact GROUP BY attribute, value" + " ORDER BY attribute, value";

    List<Problem> run(Handle handle) throws SQLException {
        List<Problem> problems = new ArrayList<>();
        for (String damage : dialect.damage(handle.getConnection())) {
            problems.add(Problem.of("check.damage", damage));
        }
        handle.createQuery(COUNTS)
                .map((row, context) -> problems.add(Problem.of("check.count", row.getString(1))
                        .with("count", row.getString(2))
                        .with("entries", row.getString(3))))
                .list();
        handle.createQuery(CHOICES)
                .map((row, context) -> problems.add(Problem.of("check.choice", row.getString(1))
                        .with("attribute", row.getString(2))
                        .with("chosen", row.getString(3))))
                .list();
        FactValues values = new FactValues();
        handle.createQuery(VALUES)
                .map((row, context) -> values.canRead(row.getString(1), row.getString(2))
                        || problems.add(Problem.of("check.fact", row.getString(2))
                                .with("attribute", row.getString(1))
                                .with("plants", row.getString(3))))
                .list();
        return problems;
    }
}
