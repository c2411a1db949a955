package org.benchleaf.catalog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.catalog.CatalogUnusable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {
    @TempDir
    Path folder;

    private Database database;

    @BeforeEach
    void openDatabase() {
        SqlCatalogStore.create(file(), Clock.systemUTC()).close();
        database = new Database(new SqliteDialect(file(), false, SqliteDialect.PATIENCE));
    }

    private Path file() {
        return folder.resolve("catalog.db");
    }

    @AfterEach
    void closeDatabase() {
        database.close();
    }

    private static String pragma(Session session, String name) throws SQLException {
        return session.first("PRAGMA " + name, row -> row.getString(1)).orElseThrow();
    }

    @Test
    void waitsForTheDiskAtEveryCommitAndKeepsTheLogThatSurvivesAPowerCut() {
        database.write(session -> {
            assertThat(pragma(session, "journal_mode")).isEqualTo("wal");
            assertThat(pragma(session, "synchronous")).isEqualTo("2"); // FULL; sqlite.org, pragma synchronous
            assertThat(pragma(session, "foreign_keys")).isEqualTo("1");
            assertThat(pragma(session, "busy_timeout")).isEqualTo("10000");
            return true;
        });
    }

    @Test
    void saysThatAnotherProgramIsWriting() throws SQLException {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = other.createStatement();
                Database impatient = new Database(new SqliteDialect(file(), false, Duration.ofMillis(50)))) {
            statement.execute("BEGIN IMMEDIATE");
            assertThatThrownBy(() -> impatient.write(State::revision))
                    .isInstanceOfSatisfying(
                            CatalogUnusable.class,
                            unusable -> assertThat(unusable.problem().key()).isEqualTo("catalog.locked"));
            assertThat(impatient.<Long>read(session -> State.revision(session).number()))
                    .as("readers go on meanwhile")
                    .isZero();
        }
    }

    @Test
    void letsReadersOnlyRead() {
        assertThat(database.<String>read(session -> pragma(session, "query_only")))
                .isEqualTo("1");
        assertThatThrownBy(() -> database.read(session -> session.execute("UPDATE catalog_state SET revision = 9")))
                .isInstanceOf(CatalogUnusable.class);
    }

    @Test
    void showsAReaderOneStateHoweverMuchIsWrittenMeanwhile() {
        database.read(session -> {
            long before = State.revision(session).number();
            Thread writer = Thread.ofPlatform()
                    .start(() -> database.write(
                            writing -> writing.execute("UPDATE catalog_state SET revision = revision + 1")));
            assertThat(joined(writer)).isTrue();
            assertThat(State.revision(session).number()).isEqualTo(before);
            return true;
        });
        assertThat(database.<Long>read(session -> State.revision(session).number()))
                .isEqualTo(1);
    }

    private static boolean joined(Thread thread) {
        try {
            return thread.join(Duration.ofSeconds(20));
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Test
    void readsWithinAReadWithoutWaitingForAnotherConnection() {
        int depth = database.<Integer>read(first -> nested(20));
        assertThat(depth).isEqualTo(20);
    }

    private int nested(int levels) {
        return levels == 0 ? 0 : 1 + database.<Integer>read(session -> nested(levels - 1));
    }

    @Test
    void takesBackEverythingWhenTheDiskIsFull() {
        database.write(session -> {
            long pages = Long.parseLong(pragma(session, "page_count"));
            return session.number("PRAGMA max_page_count = " + (pages + 2));
        });
        assertThatThrownBy(() -> database.write(session -> {
                    session.execute("UPDATE catalog_state SET revision = 5");
                    try (Batch batch = new Batch(session, "INSERT INTO source (id, text) VALUES (?, ?)")) {
                        for (int id = 1; id < 10_000; id++) {
                            batch.add(id, "a source with a long name, so that pages fill up, number " + id);
                        }
                    }
                    return true;
                }))
                .isInstanceOfSatisfying(
                        CatalogUnusable.class,
                        unusable -> assertThat(unusable.problem().key()).isEqualTo("catalog.full"));
        database.read(session -> {
            assertThat(State.revision(session).number()).isZero();
            assertThat(session.number("SELECT COUNT(*) FROM source")).isZero();
            return true;
        });
    }

    @Test
    void keepsApartTwoUsesOfOneStatementOfWhichOneStandsInsideTheOther() {
        String letters = "SELECT ? || column1 FROM (VALUES ('a'), ('b'), ('c'))";
        List<String> pairs = new ArrayList<>();
        database.read(session -> {
            session.each(
                    letters,
                    outer -> pairs.addAll(session.list(letters, inner -> inner.getString(1), outer.getString(1))),
                    "");
            return true;
        });
        assertThat(pairs).containsExactly("aa", "ab", "ac", "ba", "bb", "bc", "ca", "cb", "cc");
    }

    @Test
    void goesOnWithAStatementThatWasRefusedOnce() {
        String insert = "INSERT INTO source (id, text) VALUES (?, ?)";
        database.write(session -> session.execute(insert, 901, "list"));
        assertThatThrownBy(() -> database.write(session -> session.execute(insert, 901, "list")))
                .isInstanceOf(CatalogUnusable.class);
        assertThat(database.<Integer>write(session -> session.execute(insert, 902, "another list")))
                .isOne();
    }
}
