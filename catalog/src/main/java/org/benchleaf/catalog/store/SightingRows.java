package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.Condition;
import org.jspecify.annotations.Nullable;

/// Sightings as rows, to and fro.
final class SightingRows {
    private static final String SELECT = "SELECT s.sighting, s.walk, w.who AS walker, w.started_at, s.plant, s.item,"
            + " s.lot, s.place, s.conditions, s.height_cm, s.found, s.photo, s.remark, s.seen_at, s.received_at,"
            + " s.standing, s.problem, s.settled_how, s.settled_by, s.settled_at"
            + " FROM sighting s JOIN walk w ON w.walk = s.walk ";
    private static final String INSERT = "INSERT INTO sighting (number, sighting, walk, plant, item, lot, place,"
            + " conditions, height_cm, found, photo, remark, seen_at, who, received_at, standing, problem)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private SightingRows() {}

    static List<NotedSighting> list(Session session, String where, @Nullable Object... values) throws SQLException {
        return session.list(SELECT + where, SightingRows::read, values);
    }

    static Optional<NotedSighting> find(Session session, String key) throws SQLException {
        return list(session, "WHERE s.sighting = ?", key).stream().findFirst();
    }

    static void insert(Session session, Sighting sighting, Standing standing, Instant now) throws SQLException {
        session.execute(
                INSERT,
                session.number("SELECT COALESCE(MAX(number), 0) + 1 FROM sighting"),
                sighting.key(),
                sighting.walk().key(),
                sighting.plant().text(),
                sighting.item().orElse(null),
                sighting.lot().orElse(null),
                sighting.place(),
                Term.write(sighting.conditions()),
                sighting.heightCm().orElse(null),
                sighting.count().orElse(null),
                sighting.photo().orElse(null),
                sighting.remark(),
                sighting.seenAt().toString(),
                sighting.who(),
                LedgerRow.moment(now),
                standing instanceof Standing.InConflict ? "conflict" : "noted",
                standing instanceof Standing.InConflict(Problem problem) ? text(problem) : "");
    }

    /// A conflict that stands, perhaps for another reason or at another lot.
    static void conflict(Session session, Sighting sighting, Problem problem) throws SQLException {
        session.execute(
                "UPDATE sighting SET lot = ?, problem = ? WHERE sighting = ?",
                sighting.lot().orElse(null),
                text(problem),
                sighting.key());
    }

    static void settle(Session session, Sighting sighting, Standing.Decision how, String who, Instant now)
            throws SQLException {
        session.execute(
                "UPDATE sighting SET lot = ?, standing = 'settled', settled_how = ?, settled_by = ?, settled_at = ?"
                        + " WHERE sighting = ?",
                sighting.lot().orElse(null),
                how.name(),
                who,
                LedgerRow.moment(now),
                sighting.key());
    }

    private static NotedSighting read(ResultSet row) throws SQLException {
        Walk walk =
                new Walk(row.getString("walk"), row.getString("walker"), Instant.parse(row.getString("started_at")));
        Sighting sighting = new Sighting(
                row.getString("sighting"),
                walk,
                new PlantKey(row.getString("plant")),
                number(row, "item"),
                Optional.ofNullable(row.getString("lot")),
                row.getString("place"),
                Term.readSet(Condition.class, row.getString("conditions")).orThrow(),
                number(row, "height_cm"),
                number(row, "found"),
                Optional.ofNullable(row.getString("photo")),
                row.getString("remark"),
                Instant.parse(row.getString("seen_at")));
        return new NotedSighting(sighting, standing(row), Instant.parse(row.getString("received_at")));
    }

    private static Standing standing(ResultSet row) throws SQLException {
        return switch (row.getString("standing")) {
            case "noted" -> new Standing.Noted();
            case "conflict" -> new Standing.InConflict(problem(row.getString("problem")));
            default ->
                new Standing.Settled(
                        problem(row.getString("problem")),
                        Standing.Decision.valueOf(row.getString("settled_how")),
                        row.getString("settled_by"),
                        Instant.parse(row.getString("settled_at")));
        };
    }

    private static Optional<Integer> number(ResultSet row, String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? Optional.empty() : Optional.of(number);
    }

    /// `walk.lot.unknown`, then `read\tS0239`, each on a line of its own.
    private static String text(Problem problem) {
        return problem.key()
                + new TreeMap<>(problem.details())
                        .entrySet().stream()
                                .map(detail -> "\n" + detail.getKey() + "\t"
                                        + detail.getValue().replaceAll("[\t\n]", " "))
                                .collect(Collectors.joining());
    }

    private static Problem problem(String text) {
        String[] lines = text.split("\n");
        Map<String, String> details = new TreeMap<>();
        for (int line = 1; line < lines.length; line++) {
            int tab = lines[line].indexOf('\t');
            details.put(lines[line].substring(0, tab), lines[line].substring(tab + 1));
        }
        return new Problem(lines[0], details);
    }
}
