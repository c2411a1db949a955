package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.walk.CropWalks;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Settlement;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Crop walks over the database: a sighting and what it means for the stock in one transaction.
final class SqlCropWalks implements CropWalks {
    private final Database database;
    private final Clock clock;
    private final SightingJudge judge;

    SqlCropWalks(Database database, Clock clock, StockReader stock) {
        this.database = database;
        this.clock = clock;
        this.judge = new SightingJudge(stock, clock.getZone());
    }

    @Override
    public Reading<NotedSighting> note(Sighting sighting) {
        return sighting.checked().flatMap(checked -> database.write(session -> note(session, checked)));
    }

    private Reading<NotedSighting> note(Session session, Sighting sighting) throws SQLException {
        Optional<NotedSighting> earlier = SightingRows.find(session, sighting.key());
        if (earlier.isPresent()) {
            return saysTheSame(earlier.get(), sighting)
                    ? Reading.of(earlier.get())
                    : Reading.refused("walk.key.reused", sighting.key());
        }
        Instant now = clock.instant();
        Walk walk = sighting.walk();
        session.execute(
                "INSERT INTO walk (walk, who, started_at) VALUES (?, ?, ?) ON CONFLICT (walk) DO NOTHING",
                walk.key(),
                walk.who(),
                walk.startedAt().toString());
        Standing standing = judge.write(session, sighting, false, now)
                .<Standing>map(Standing.InConflict::new)
                .orElseGet(Standing.Noted::new);
        SightingRows.insert(session, sighting, standing, now);
        return Reading.of(SightingRows.find(session, sighting.key()).orElseThrow());
    }

    /// Whoever sends it again, and whatever lot it was settled at since.
    private static boolean saysTheSame(NotedSighting earlier, Sighting sighting) {
        Sighting then = earlier.sighting();
        return then.plant().equals(sighting.plant())
                && then.conditions().equals(sighting.conditions())
                && then.count().equals(sighting.count())
                && then.heightCm().equals(sighting.heightCm())
                && then.remark().equals(sighting.remark())
                && then.seenAt().equals(sighting.seenAt());
    }

    @Override
    public Optional<NotedSighting> sighting(String key) {
        return database.read(session -> SightingRows.find(session, key));
    }

    @Override
    public Reading<NotedSighting> settle(String key, Settlement settlement, String who) {
        return database.write(session -> {
            Optional<NotedSighting> noted = SightingRows.find(session, key);
            if (noted.isEmpty()) {
                return Reading.refused("walk.sighting.unknown", key);
            }
            if (noted.get().isInConflict()) {
                settle(session, noted.get().sighting(), settlement, who);
            }
            return Reading.of(SightingRows.find(session, key).orElseThrow());
        });
    }

    private void settle(Session session, Sighting sighting, Settlement settlement, String who) throws SQLException {
        Instant now = clock.instant();
        Sighting meant = settlement instanceof Settlement.AtLot(String lot) ? sighting.at(lot) : sighting;
        Standing.Decision how = switch (settlement) {
            case Settlement.AsSeen() -> Standing.Decision.AS_SEEN;
            case Settlement.AtLot atLot -> Standing.Decision.OTHER_LOT;
            case Settlement.NoteOnly() -> Standing.Decision.NOTE_ONLY;
        };
        Optional<Problem> problem = settlement instanceof Settlement.NoteOnly
                ? Optional.empty()
                : judge.write(session, meant, settlement instanceof Settlement.AsSeen, now);
        if (problem.isPresent()) {
            SightingRows.conflict(session, meant, problem.get());
        } else {
            SightingRows.settle(session, meant, how, who, now);
        }
    }

    @Override
    public List<NotedSighting> conflicts() {
        return database.read(session -> SightingRows.list(session, "WHERE s.standing = 'conflict' ORDER BY s.number"));
    }

    @Override
    public List<Walk> walks(int most) {
        return database.read(session -> session.list(
                "SELECT walk, who, started_at FROM walk ORDER BY started_at DESC, walk LIMIT ?",
                row -> new Walk(row.getString(1), row.getString(2), Instant.parse(row.getString(3))),
                most));
    }

    @Override
    public List<NotedSighting> seenOn(String walk) {
        return database.read(session -> SightingRows.list(session, "WHERE s.walk = ? ORDER BY s.number", walk));
    }

    @Override
    public List<NotedSighting> seenSince(Instant from, int most) {
        // moments are compared as texts up to the second, in which all of them agree
        return database.read(session -> SightingRows.list(
                session,
                "WHERE s.seen_at >= ? ORDER BY s.seen_at DESC, s.number DESC LIMIT ?",
                from.toString().substring(0, 19),
                most));
    }
}
