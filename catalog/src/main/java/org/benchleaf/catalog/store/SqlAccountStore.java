package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.accounts.AccessToken;
import org.benchleaf.catalog.accounts.AccountStore;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.AuditLine;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.catalog.accounts.StaffSession;
import org.benchleaf.shared.Term;

/// Staff in the database. They are no part of the catalog's state: signing in changes no revision.
final class SqlAccountStore implements AccountStore {
    private static final String MEMBER = "s.name, s.role, s.tier, s.active, s.since";
    private static final String SESSION = "SELECT " + MEMBER + ", e.id, e.started_at, e.seen_at, e.address, e.device"
            + " FROM staff_session e JOIN staff s ON s.folded = e.staff WHERE ";
    private static final String TOKEN = "SELECT " + MEMBER + ", t.id, t.label, t.made_at, t.ends_at, t.used_at"
            + " FROM staff_token t JOIN staff s ON s.folded = t.staff WHERE ";

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final Database database;

    SqlAccountStore(Database database) {
        this.database = database;
    }

    @Override
    public List<StaffMember> staff() {
        return database.read(session ->
                session.list("SELECT " + MEMBER + " FROM staff s ORDER BY s.folded", SqlAccountStore::member));
    }

    @Override
    public Optional<Credential> credential(String folded) {
        return database.read(session -> session.first(
                "SELECT " + MEMBER + ", s.password FROM staff s WHERE s.folded = ?",
                row -> new Credential(member(row), row.getString("password")),
                folded));
    }

    @Override
    public boolean add(StaffMember member, String password, Note note) {
        return database.write(session -> {
            int added = session.execute(
                    "INSERT INTO staff (folded, name, role, tier, active, password, since) VALUES (?, ?, ?, ?, 1, ?, ?)"
                            + " ON CONFLICT (folded) DO NOTHING",
                    StaffMember.folded(member.name()),
                    member.name(),
                    member.role().term(),
                    member.tier().orElse(""),
                    password,
                    stamp(member.since()));
            if (added == 1) {
                write(session, note);
            }
            return added == 1;
        });
    }

    @Override
    public boolean change(StaffMember member, Note note) {
        return database.write(session -> {
            String folded = StaffMember.folded(member.name());
            boolean owns = member.active() && member.role() == Role.OWNER;
            List<String> owners = session.list(
                    "SELECT folded FROM staff WHERE role = 'owner' AND active = 1", row -> row.getString(1));
            if (!owns && owners.equals(List.of(folded))) {
                return false;
            }
            session.execute(
                    "UPDATE staff SET role = ?, tier = ?, active = ? WHERE folded = ?",
                    member.role().term(),
                    member.tier().orElse(""),
                    member.active() ? 1 : 0,
                    folded);
            if (!member.active()) {
                session.execute("DELETE FROM staff_session WHERE staff = ?", folded);
                session.execute("DELETE FROM staff_token WHERE staff = ?", folded);
            }
            write(session, note);
            return true;
        });
    }

    @Override
    public void setPassword(String folded, String password, Note note) {
        database.write(session -> {
            session.execute("UPDATE staff SET password = ? WHERE folded = ?", password, folded);
            session.execute("DELETE FROM staff_session WHERE staff = ?", folded);
            write(session, note);
            return true;
        });
    }

    @Override
    public <T> T attempt(List<String> subjects, Instant forgottenBefore, Instant now, Gate<T> gate) {
        return database.write(session -> {
            session.execute("DELETE FROM sign_in_failure WHERE last_at < ?", stamp(forgottenBefore));
            List<Failures> failures = new ArrayList<>();
            for (String subject : subjects) {
                failures.add(session.first(
                                "SELECT failures, last_at FROM sign_in_failure WHERE subject = ?",
                                row -> new Failures(row.getInt(1), Instant.parse(row.getString(2))),
                                subject)
                        .orElse(new Failures(0, Instant.EPOCH)));
            }
            Ruling<T> ruling = gate.judge(failures);
            if (ruling.counts()) {
                for (String subject : subjects) {
                    session.execute(
                            "INSERT INTO sign_in_failure (subject, failures, last_at) VALUES (?, 1, ?)"
                                    + " ON CONFLICT (subject) DO UPDATE SET"
                                    + " failures = sign_in_failure.failures + 1, last_at = excluded.last_at",
                            subject,
                            stamp(now));
                }
            }
            return ruling.value();
        });
    }

    @Override
    public void open(String sum, StaffSession opened, String forgotten, String forgiven, Note note) {
        database.write(session -> {
            session.execute(
                    "INSERT INTO staff_session (sum, id, staff, started_at, seen_at, address, device)"
                            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                    sum,
                    opened.id(),
                    StaffMember.folded(opened.member().name()),
                    stamp(opened.startedAt()),
                    stamp(opened.seenAt()),
                    opened.from(),
                    opened.device());
            session.execute("DELETE FROM sign_in_failure WHERE subject = ?", forgotten);
            session.execute(
                    "UPDATE sign_in_failure SET failures = failures - 1 WHERE subject = ? AND failures > 0", forgiven);
            write(session, note);
            return true;
        });
    }

    @Override
    public boolean signedInFrom(String folded, String address, Instant after) {
        return database.read(session -> session.list(
                        "SELECT who FROM staff_log WHERE act = 'signed.in' AND address = ? AND at > ?",
                        row -> StaffMember.folded(row.getString(1)),
                        address,
                        stamp(after)))
                .contains(folded);
    }

    @Override
    public Optional<StaffSession> session(String sum) {
        return database.read(session -> session.first(SESSION + "e.sum = ?", SqlAccountStore::session, sum));
    }

    @Override
    public void seen(String sum, Instant now) {
        database.write(
                session -> session.execute("UPDATE staff_session SET seen_at = ? WHERE sum = ?", stamp(now), sum));
    }

    @Override
    public List<StaffSession> sessions(String folded) {
        return database.read(session -> session.list(
                SESSION + "e.staff = ? ORDER BY e.started_at DESC, e.id", SqlAccountStore::session, folded));
    }

    @Override
    public int end(String folded, Optional<String> id, Note note) {
        return database.write(session -> {
            int ended = id.isPresent()
                    ? session.execute("DELETE FROM staff_session WHERE staff = ? AND id = ?", folded, id.get())
                    : session.execute("DELETE FROM staff_session WHERE staff = ?", folded);
            if (ended > 0) {
                write(session, note);
            }
            return ended;
        });
    }

    @Override
    public void sweep(Instant startedBefore, Instant seenBefore) {
        database.write(session -> session.execute(
                "DELETE FROM staff_session WHERE started_at < ? OR seen_at < ?",
                stamp(startedBefore),
                stamp(seenBefore)));
    }

    @Override
    public void addToken(String sum, AccessToken token, Note note) {
        database.write(session -> {
            session.execute(
                    "INSERT INTO staff_token (sum, id, staff, label, made_at, ends_at) VALUES (?, ?, ?, ?, ?, ?)",
                    sum,
                    token.id(),
                    StaffMember.folded(token.member().name()),
                    token.label(),
                    stamp(token.madeAt()),
                    stamp(token.endsAt()));
            write(session, note);
            return true;
        });
    }

    @Override
    public Optional<AccessToken> token(String sum) {
        return database.read(session -> session.first(TOKEN + "t.sum = ?", SqlAccountStore::token, sum));
    }

    @Override
    public List<AccessToken> tokens(String folded) {
        return database.read(session ->
                session.list(TOKEN + "t.staff = ? ORDER BY t.made_at DESC, t.id", SqlAccountStore::token, folded));
    }

    @Override
    public boolean removeToken(String folded, String id, Note note) {
        return database.write(session -> {
            int removed = session.execute("DELETE FROM staff_token WHERE staff = ? AND id = ?", folded, id);
            if (removed > 0) {
                write(session, note);
            }
            return removed > 0;
        });
    }

    @Override
    public void used(String sum, Instant now) {
        database.write(session -> session.execute("UPDATE staff_token SET used_at = ? WHERE sum = ?", stamp(now), sum));
    }

    @Override
    public void write(Note note) {
        database.write(session -> {
            write(session, note);
            return true;
        });
    }

    @Override
    public List<AuditLine> log(long before, int most) {
        return database.read(session -> session.list(
                "SELECT entry, at, who, address, act, about FROM staff_log WHERE entry < ?"
                        + " ORDER BY entry DESC LIMIT ?",
                SqlAccountStore::line,
                before,
                most));
    }

    @Override
    public List<AuditLine> log(String act, String start, int most) {
        String plain = start.replaceAll("[%_\\\\]", ""); // signs of LIKE
        return database.read(session -> session.list(
                "SELECT entry, at, who, address, act, about FROM staff_log WHERE act = ? AND about LIKE ?"
                        + " ORDER BY entry DESC LIMIT ?",
                SqlAccountStore::line,
                act,
                plain + "%",
                most));
    }

    private static AuditLine line(ResultSet row) throws SQLException {
        return new AuditLine(
                row.getLong("entry"),
                Instant.parse(row.getString("at")),
                new Actor(row.getString("who"), row.getString("address")),
                row.getString("act"),
                row.getString("about"));
    }

    private static void write(Session session, Note note) throws SQLException {
        session.execute(
                "INSERT INTO staff_log (entry, at, who, address, act, about)"
                        + " VALUES ((SELECT COALESCE(MAX(entry), 0) + 1 FROM staff_log), ?, ?, ?, ?, ?)",
                stamp(note.at()),
                note.actor().who(),
                note.actor().from(),
                note.act(),
                note.about());
    }

    /// Texts of one length sort as the moments do.
    private static String stamp(Instant moment) {
        return STAMP.format(moment);
    }

    private static StaffMember member(ResultSet row) throws SQLException {
        return new StaffMember(
                row.getString("name"),
                Term.read(Role.class, row.getString("role")).orThrow(),
                Optional.of(row.getString("tier")).filter(tier -> !tier.isEmpty()),
                row.getInt("active") == 1,
                Instant.parse(row.getString("since")));
    }

    private static StaffSession session(ResultSet row) throws SQLException {
        return new StaffSession(
                row.getString("id"),
                member(row),
                Instant.parse(row.getString("started_at")),
                Instant.parse(row.getString("seen_at")),
                row.getString("address"),
                row.getString("device"));
    }

    private static AccessToken token(ResultSet row) throws SQLException {
        return new AccessToken(
                row.getString("id"),
                row.getString("label"),
                member(row),
                Instant.parse(row.getString("made_at")),
                Instant.parse(row.getString("ends_at")),
                Optional.ofNullable(row.getString("used_at")).map(Instant::parse));
    }
}
