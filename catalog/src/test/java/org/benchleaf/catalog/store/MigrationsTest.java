package org.benchleaf.catalog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.shared.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsTest {
    private static final Instant THEN = Instant.parse("2026-11-25T07:00:00Z");
    private static final Instant LATER = Instant.parse("2027-03-01T07:00:00Z");

    @TempDir
    Path folder;

    private Dialect dialect;
    private Database database;

    @BeforeEach
    void openEmptyDatabase() {
        dialect = new SqliteDialect(folder.resolve("catalog.db"), true, SqliteDialect.PATIENCE);
        database = new Database(dialect);
    }

    @AfterEach
    void closeDatabase() {
        database.close();
    }

    private Migrations first(int files) {
        return new Migrations(dialect, Migrations.ALL.subList(0, files));
    }

    private List<String> applied() {
        return database.read(session -> session.list(
                "SELECT name || ' ' || applied_at FROM schema_version ORDER BY version", row -> row.getString(1)));
    }

    private boolean write(Step step) {
        return database.write(session -> {
            step.run(session);
            return true;
        });
    }

    private interface Step {
        void run(Session session) throws SQLException;
    }

    @Test
    void bringsAnOlderCatalogUpToDateAndRunsNoFileTwice() {
        write(session -> first(2).create(session, "catalog.db", THEN));
        write(session -> first(3).update(session, "catalog.db", LATER));
        write(session -> first(3).update(session, "catalog.db", LATER.plusSeconds(60)));
        assertThat(applied())
                .containsExactly(
                        "001_plants.sql 2026-11-25T07:00:00Z",
                        "002_stock.sql 2026-11-25T07:00:00Z",
                        "003_changes.sql 2027-03-01T07:00:00Z");
    }

    @Test
    void keepsTheLedgerOfAnOlderCatalogTrue() {
        int beforeHolds = Migrations.ALL.indexOf("030_ledger.sql");
        write(session -> first(beforeHolds).create(session, "catalog.db", THEN));
        write(session -> {
            session.execute("INSERT INTO plant (serial, plant_key, name, sort_key, genus_mark, genus)"
                    + " VALUES (0, 'K7QMN2X', 'Itea', 'itea', '', 'Itea')");
            session.execute("INSERT INTO item (plant, number, size, form) VALUES (0, 1, '#3', 'regular')");
            session.execute("INSERT INTO lot (lot, plant, item, place, on_hand, conditions)"
                    + " VALUES ('S1', 0, 1, '', 32, '')");
            session.execute("INSERT INTO ledger VALUES (1, 'S1', 'counted', 40, 40, '2026-11-25T07:00:00Z', 'import',"
                    + " 'stock.csv', 'k1'), (2, 'S1', 'held', -8, 8, '2026-11-25T08:00:00Z', 'Ann', '', 'k2')");
        });
        write(session -> first(Migrations.ALL.size()).update(session, "catalog.db", LATER));
        assertThat(database.<List<Problem>>read(session -> new StoreCheck(dialect).run(session)))
                .isEmpty();
        assertThat(database.<List<LedgerLine>>read(session -> LedgerReader.lines(session, "S1", 9)))
                .extracting(LedgerLine::change, LedgerLine::count, LedgerLine::who)
                .containsExactly(tuple(40, 40, "import"), tuple(-8, 32, "Ann"));
    }

    @Test
    void refusesACatalogOfANewerProgramAndLeavesItAsItIs() {
        write(session -> first(3).create(session, "catalog.db", THEN));
        assertThatThrownBy(() -> write(session -> first(2).update(session, "catalog.db", LATER)))
                .isInstanceOf(CatalogUnusable.class)
                .hasMessageContaining("catalog.newer");
        assertThat(applied()).hasSize(3);
    }

    @Test
    void leavesAnEmptyDatabaseWhenAFileFails() {
        Migrations broken = new Migrations(dialect, List.of("001_plants.sql", "001_plants.sql"));
        assertThatThrownBy(() -> write(session -> broken.create(session, "catalog.db", THEN)))
                .isInstanceOf(CatalogUnusable.class);
        assertThat(database.<Long>read(session -> session.number("SELECT COUNT(*) FROM sqlite_schema")))
                .isZero();
    }
}
