package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.ListRefused;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.lists.PlantLists;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.stock.StockSize;
import org.jspecify.annotations.Nullable;

/// Plant lists in the database. They are no part of the catalog's state: saving one changes no revision.
final class SqlPlantLists implements PlantLists {
    private static final String HEAD = "SELECT id, name, version, next_line, zone, light, soil, ship_to, by_week,"
            + " changed_at FROM plant_list WHERE folded = ?";
    private static final String LINES =
            "SELECT line, plant, size, quantity, worked, note FROM plant_list_line WHERE list = ? ORDER BY line";
    private static final String INSERT = "INSERT INTO plant_list (id, name, folded, version, next_line, zone, light,"
            + " soil, ship_to, by_week, changed_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String UPDATE = "UPDATE plant_list SET version = ?, next_line = ?, zone = ?, light = ?,"
            + " soil = ?, ship_to = ?, by_week = ?, changed_at = ? WHERE folded = ? AND version = ?";

    private final Database database;
    private final Clock clock;

    SqlPlantLists(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public List<String> names() {
        return database.read(
                session -> session.list("SELECT name FROM plant_list ORDER BY folded", row -> row.getString(1)));
    }

    @Override
    public Optional<PlantList> find(String name) {
        return database.read(session -> read(session, name));
    }

    private static Optional<PlantList> read(Session session, String name) throws SQLException {
        Optional<Head> head = session.first(HEAD, SqlPlantLists::head, fold(name));
        if (head.isEmpty()) {
            return Optional.empty();
        }
        List<ListLine> lines =
                session.list(LINES, SqlPlantLists::line, head.get().id());
        PlantList list = head.get().list();
        return Optional.of(
                new PlantList(list.name(), list.site(), lines, list.nextLine(), list.version(), list.changedAt()));
    }

    @Override
    public PlantList save(PlantList list) {
        return database.write(session -> {
            Instant now = clock.instant();
            ListSite site = list.site();
            @Nullable String zone = text(site.zone());
            @Nullable String light = site.light().map(Term::term).orElse(null);
            @Nullable String soil = site.soil().map(Term::term).orElse(null);
            @Nullable String shipTo = text(site.shipTo());
            @Nullable String by = text(site.by());
            Optional<Head> old = session.first(HEAD, SqlPlantLists::head, fold(list.name()));
            long id;
            if (list.version() == 0) {
                if (old.isPresent()) {
                    throw new ListRefused(Problem.of("list.exists", list.name()));
                }
                id = session.number("SELECT COALESCE(MAX(id), 0) + 1 FROM plant_list");
                session.execute(
                        INSERT,
                        id,
                        list.name(),
                        fold(list.name()),
                        1,
                        list.nextLine(),
                        zone,
                        light,
                        soil,
                        shipTo,
                        by,
                        now.toString());
            } else {
                int changed = session.execute(
                        UPDATE,
                        list.version() + 1,
                        list.nextLine(),
                        zone,
                        light,
                        soil,
                        shipTo,
                        by,
                        now.toString(),
                        fold(list.name()),
                        list.version());
                if (changed == 0) {
                    throw new ListRefused(Problem.of("list.stale", list.name()));
                }
                id = old.orElseThrow().id();
                session.execute("DELETE FROM plant_list_line WHERE list = ?", id);
            }
            for (ListLine line : list.lines()) {
                session.execute(
                        "INSERT INTO plant_list_line (list, line, plant, size, quantity, worked, note)"
                                + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                        id,
                        line.number(),
                        line.plant().text(),
                        text(line.size()),
                        line.quantity(),
                        line.worked(),
                        line.note());
            }
            return read(session, list.name()).orElseThrow();
        });
    }

    @Override
    public boolean delete(String name) {
        return database.write(session -> {
            Optional<Head> head = session.first(HEAD, SqlPlantLists::head, fold(name));
            if (head.isEmpty()) {
                return false;
            }
            session.execute(
                    "DELETE FROM plant_list_line WHERE list = ?", head.get().id());
            session.execute("DELETE FROM plant_list WHERE id = ?", head.get().id());
            return true;
        });
    }

    private record Head(long id, PlantList list) {}

    private static Head head(ResultSet row) throws SQLException {
        ListSite site = new ListSite(
                read(row, "zone").flatMap(text -> HardinessZone.read(text).toOptional()),
                read(row, "light")
                        .flatMap(text -> Term.read(Exposure.class, text).toOptional()),
                read(row, "soil")
                        .flatMap(text -> Term.read(Moisture.class, text).toOptional()),
                read(row, "ship_to").flatMap(text -> Destination.read(text).toOptional()),
                read(row, "by_week").flatMap(text -> YearWeek.read(text).toOptional()));
        return new Head(
                row.getLong("id"),
                new PlantList(
                        row.getString("name"),
                        site,
                        List.of(),
                        row.getInt("next_line"),
                        row.getInt("version"),
                        Optional.of(Instant.parse(row.getString("changed_at")))));
    }

    private static ListLine line(ResultSet row) throws SQLException {
        return new ListLine(
                row.getInt("line"),
                new PlantKey(row.getString("plant")),
                read(row, "size").flatMap(text -> StockSize.read(text).toOptional()),
                row.getInt("quantity"),
                row.getString("worked"),
                row.getString("note"));
    }

    private static Optional<String> read(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    private static @Nullable String text(Optional<?> value) {
        return value.map(Object::toString).orElse(null);
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
