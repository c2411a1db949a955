package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.shared.Problem;

/// Looks through the whole catalog for what must never be: damage, counts and holds that are not their entries'
/// sum, facts that cannot be read, attributes without exactly one chosen fact.
record StoreCheck(Dialect dialect) {
    private static final String COUNTS = "SELECT l.lot, l.on_hand, COALESCE(SUM(e.quantity), 0) AS entries FROM lot l"
            + " LEFT JOIN ledger e ON e.lot = l.lot GROUP BY l.lot, l.on_hand"
            + " HAVING l.on_hand <> COALESCE(SUM(e.quantity), 0) ORDER BY l.lot";
    private static final String HOLDS = "SELECT e.hold, COALESCE(MAX(h.quantity), 0), SUM(e.held) FROM ledger e"
            + " LEFT JOIN hold h ON h.hold = e.hold WHERE e.hold IS NOT NULL GROUP BY e.hold"
            + " HAVING SUM(e.held) <> COALESCE(MAX(h.quantity), 0) ORDER BY e.hold";
    private static final String CHOICES = "SELECT p.plant_key, f.attribute, SUM(f.chosen) FROM fact f"
            + " JOIN plant p ON p.serial = f.plant GROUP BY p.plant_key, f.attribute HAVING SUM(f.chosen) <> 1"
            + " ORDER BY p.plant_key, f.attribute";
    private static final String VALUES =
            "SELECT attribute, value, COUNT(*) FROM fact GROUP BY attribute, value" + " ORDER BY attribute, value";

    List<Problem> run(Session session) throws SQLException {
        List<Problem> problems = new ArrayList<>();
        for (String damage : dialect.damage(session.connection())) {
            problems.add(Problem.of("check.damage", damage));
        }
        session.each(
                COUNTS,
                row -> problems.add(Problem.of("check.count", row.getString(1))
                        .with("count", row.getString(2))
                        .with("entries", row.getString(3))));
        session.each(
                HOLDS,
                row -> problems.add(Problem.of("check.hold", row.getString(1))
                        .with("left", row.getString(2))
                        .with("entries", row.getString(3))));
        session.each(
                CHOICES,
                row -> problems.add(Problem.of("check.choice", row.getString(1))
                        .with("attribute", row.getString(2))
                        .with("chosen", row.getString(3))));
        FactValues values = new FactValues();
        session.each(VALUES, row -> {
            if (!values.canRead(row.getString(1), row.getString(2))) {
                problems.add(Problem.of("check.fact", row.getString(2))
                        .with("attribute", row.getString(1))
                        .with("plants", row.getString(3)));
            }
        });
        return problems;
    }
}
