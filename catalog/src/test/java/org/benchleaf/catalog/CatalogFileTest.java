package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.benchleaf.catalog.intake.ImportPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CatalogFileTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("catalog.db");
    }

    private void makeCatalog() {
        try (Catalog catalog = Catalog.create(file())) {
            catalog.apply(plan(catalog, ImportPlan.Rank.OWN, maples(), List.of()));
        }
    }

    private void change(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private static void assertUnusable(String key, ThrowingCallable attempt) {
        assertThatThrownBy(attempt)
                .isInstanceOfSatisfying(
                        CatalogUnusable.class,
                        unusable -> assertThat(unusable.problem().key()).isEqualTo(key));
    }

    @Test
    void findsEverythingAgainAfterClosing() {
        makeCatalog();
        try (Catalog catalog = Catalog.open(file())) {
            assertThat(catalog.view().revision()).isEqualTo(new CatalogRevision(1));
            assertThat(catalog.names().byName(RED_MAPLE)).isPresent();
        }
        assertThat(folder)
                .as("the log is folded into the file, so that copying one file copies the catalog")
                .isDirectoryNotContaining("glob:**-wal");
    }

    @Test
    void makesTheFoldersAboveANewCatalog() {
        Catalog.create(folder.resolve("shop/workspace/catalog.db")).close();
        assertThat(folder.resolve("shop/workspace/catalog.db")).isRegularFile();
    }

    @Test
    void neverMakesACatalogOverAnother() {
        makeCatalog();
        assertUnusable("catalog.exists", () -> Catalog.create(file()));
        try (Catalog catalog = Catalog.open(file())) {
            assertThat(catalog.names().byName(RED_MAPLE)).isPresent();
        }
    }

    @Test
    void saysThatTheCatalogIsMissingAndMakesNone() {
        assertUnusable("catalog.missing", () -> Catalog.open(file()));
        assertThat(file()).doesNotExist();
    }

    @Test
    void leavesAFileAloneThatIsNoDatabase() throws IOException {
        Files.writeString(file(), "name,height\nAcer rubrum,40-60 ft\n");
        assertUnusable("catalog.not.database", () -> Catalog.open(file()));
        assertUnusable("catalog.not.database", () -> Catalog.create(file()));
        assertThat(file()).hasContent("name,height\nAcer rubrum,40-60 ft\n");
        assertUnusable("catalog.not.database", () -> Catalog.open(folder));
    }

    @Test
    void leavesADatabaseAloneThatIsNoCatalog() throws SQLException {
        change("CREATE TABLE recipe (name TEXT)");
        assertUnusable("catalog.foreign", () -> Catalog.open(file()));
        assertUnusable("catalog.foreign", () -> Catalog.create(file()));
    }

    @Test
    void refusesACatalogOfANewerProgram() throws SQLException {
        makeCatalog();
        change("INSERT INTO schema_version VALUES (99, '099_later.sql', 'x', '2030-01-01T00:00:00Z')");
        assertThatThrownBy(() -> Catalog.open(file())).isInstanceOfSatisfying(CatalogUnusable.class, unusable -> {
            assertThat(unusable.problem().key()).isEqualTo("catalog.newer");
            assertThat(unusable.problem().details())
                    .containsEntry("found", "99")
                    .containsKey("known");
        });
    }

    @Test
    void refusesACatalogMadeByOtherMigrationsThanOurs() throws SQLException {
        makeCatalog();
        change("UPDATE schema_version SET sha256 = 'edited' WHERE version = 2");
        assertUnusable("catalog.migration.changed", () -> Catalog.open(file()));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void saysThatAFolderTakesNoFiles() {
        // holds for every user, the one who may do anything included
        assertUnusable("catalog.read.only", () -> Catalog.create(Path.of("/proc/benchleaf/catalog.db")));
    }

    @Test
    void findsADamagedPageAndSaysSo() throws IOException {
        makeCatalog();
        try (RandomAccessFile bytes = new RandomAccessFile(file().toFile(), "rw")) {
            for (long page = 4096; page < bytes.length(); page += 4096) {
                bytes.seek(page + 8);
                bytes.write(new byte[64]);
            }
        }
        assertUnusable("catalog.damaged", () -> {
            try (Catalog catalog = Catalog.open(file())) {
                catalog.view().forEachPlant(plant -> {});
            }
        });
    }

    @Test
    void findsACountThatIsNotTheSumOfItsEntriesAndAFactThatNobodyCanRead() throws SQLException {
        try (Catalog catalog = Catalog.create(file())) {
            catalog.apply(plan(catalog, ImportPlan.Rank.OWN, maples(), List.of(Drafts.lot("T0001", RED_MAPLE, 40))));
        }
        change("UPDATE lot SET on_hand = 41", "UPDATE fact SET value = 'as tall as a barn' WHERE attribute = 'height'");
        try (Catalog catalog = Catalog.open(file())) {
            assertThat(catalog.check())
                    .extracting(problem -> problem.key())
                    .containsExactly("check.count", "check.fact");
            assertThat(catalog.view().plant(catalog.names().byName(RED_MAPLE).orElseThrow()))
                    .as("one bad cell does not hide the plant")
                    .isPresent();
        }
    }

    @Test
    void canBeClosedTwiceAndNotUsedAfterwards() {
        Catalog catalog = Catalog.create(file());
        catalog.close();
        catalog.close();
        assertThatThrownBy(() -> catalog.view().revision()).isInstanceOf(IllegalStateException.class);
    }
}
