package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.walk.Bulletin;
import org.benchleaf.catalog.walk.Bulletins;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.YearWeek;

/// Bulletins in the database. They are no part of the catalog's state: saving one changes no revision.
final class SqlBulletins implements Bulletins {
    private static final String WRITE = "INSERT INTO bulletin (week, version, greeting, who, changed_at, published_at)"
            + " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (week) DO UPDATE SET version = excluded.version,"
            + " greeting = excluded.greeting, who = excluded.who, changed_at = excluded.changed_at,"
            + " published_at = excluded.published_at";

    private final Database database;
    private final Clock clock;

    SqlBulletins(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public Optional<Bulletin> find(YearWeek week) {
        return database.read(session -> read(session, week));
    }

    private static Optional<Bulletin> read(Session session, YearWeek week) throws SQLException {
        List<Bulletin.Line> lines = session.list(
                "SELECT sighting, reason FROM bulletin_line WHERE week = ? ORDER BY line",
                row -> new Bulletin.Line(row.getString(1), row.getString(2)),
                week);
        return session.first(
                "SELECT version, greeting, who, published_at FROM bulletin WHERE week = ?",
                row -> new Bulletin(
                        week,
                        row.getInt(1),
                        row.getString(2),
                        lines,
                        row.getString(3),
                        Optional.ofNullable(row.getString(4)).map(Instant::parse)),
                week);
    }

    @Override
    public List<YearWeek> published(int most) {
        return database.read(session -> session.list(
                "SELECT week FROM bulletin WHERE published_at IS NOT NULL ORDER BY week DESC LIMIT ?",
                row -> YearWeek.read(row.getString(1)).orThrow(),
                most));
    }

    @Override
    public Reading<Bulletin> save(Bulletin bulletin) {
        return database.write(session -> {
            YearWeek week = bulletin.week();
            int version = read(session, week).map(Bulletin::version).orElse(0);
            if (version != bulletin.version()) {
                return Reading.refused("bulletin.stale", week.toString());
            }
            for (Bulletin.Line line : bulletin.lines()) {
                if (SightingRows.find(session, line.sighting()).isEmpty()) {
                    return new Reading.Refused<>(Problem.of("bulletin.sighting.unknown", line.sighting()));
                }
            }
            session.execute(
                    WRITE,
                    week,
                    version + 1,
                    bulletin.greeting(),
                    bulletin.who(),
                    LedgerRow.moment(clock.instant()),
                    bulletin.publishedAt().map(LedgerRow::moment).orElse(null));
            session.execute("DELETE FROM bulletin_line WHERE week = ?", week);
            for (int at = 0; at < bulletin.lines().size(); at++) {
                Bulletin.Line line = bulletin.lines().get(at);
                session.execute(
                        "INSERT INTO bulletin_line (week, line, sighting, reason) VALUES (?, ?, ?, ?)",
                        week,
                        at + 1,
                        line.sighting(),
                        line.reason());
            }
            return Reading.of(read(session, week).orElseThrow());
        });
    }
}
