package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.benchleaf.app.web.Server;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Two servers with workspaces of their own on one PostgreSQL: what one changes the other shows and finds.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TwoServersTest {
    /// How long a test waits before it fails. How soon one follows the other is measured: `bench/run ledger`.
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient http = HttpClient.newHttpClient();
    private Path folder = Path.of("");
    private Optional<EmbeddedPostgres> database = Optional.empty();

    @BeforeAll
    void startDatabase(@TempDir Path temporary) throws IOException {
        Assumptions.assumeTrue(
                System.getProperty("os.name").equals("Linux")
                        && System.getProperty("os.arch").equals("amd64"),
                "the tests bring binaries of PostgreSQL for Linux on amd64 only");
        folder = temporary;
        database = Optional.of(EmbeddedPostgres.builder().start());
        String url = url();
        assertThat(Run.benchleaf("new", folder.resolve("one").toString(), "--database", url)
                        .code())
                .isZero();
        assertThat(Run.benchleaf("new", folder.resolve("two").toString(), "--database", url)
                        .code())
                .as("the second joins the catalog of the first")
                .isZero();
        load("plants.csv", "name,source\nItea virginica,from memory\nClethra alnifolia,from memory\n");
        load("stock.csv", "lot,name,size,count\nS1,Itea virginica,#3,50\n");
    }

    @AfterAll
    void stopDatabase() throws IOException {
        if (database.isPresent()) {
            database.get().close();
        }
    }

    private String url() {
        return database.orElseThrow().getJdbcUrl("postgres", "postgres");
    }

    private void load(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, content);
        Run run = Run.benchleaf(
                "load", file.toString(), "--workspace", folder.resolve("one").toString());
        assertThat(run.code()).as(run.err()).isZero();
    }

    private Benchleaf open(String workspace) {
        return Benchleaf.open(folder.resolve(workspace), Run.NOVEMBER);
    }

    private static LedgerResult ship(Benchleaf benchleaf, String key) {
        return benchleaf.ledger().record(LedgerEntry.of("S1", new StockEvent.Shipped(1), "Ruth", "", key));
    }

    private String page(Server server, PlantKey plant) {
        try {
            URI address = URI.create("http://127.0.0.1:" + server.port() + "/p/" + plant);
            return http.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                    .body();
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static boolean within(Duration time, BooleanSupplier so) {
        long end = System.nanoTime() + time.toNanos();
        while (System.nanoTime() < end) {
            if (so.getAsBoolean()) {
                return true;
            }
            try {
                Thread.sleep(10);
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
        return so.getAsBoolean();
    }

    private void cutConnections() throws SQLException {
        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement();
                var rows = statement.executeQuery("SELECT COUNT(pg_terminate_backend(pid)) FROM pg_stat_activity"
                        + " WHERE application_name = 'Benchleaf'")) {
            rows.next();
            assertThat(rows.getInt(1)).isPositive();
        }
    }

    @Test
    void followEachOtherAlsoAfterTheirConnectionsWereCut() throws Exception {
        try (Benchleaf one = open("one");
                Benchleaf two = open("two");
                Catalog.Following first = one.follow();
                Catalog.Following second = two.follow();
                Server server = Server.start(two, "127.0.0.1", 0)) {
            PlantRecord itea = one.plantFinder().find("Itea virginica");
            two.index();
            assertThat(page(server, itea.key())).contains("50 now").contains("Stock as of 25 November 2026, 10:00");
            for (int round = 0; round < 2; round++) {
                int left = 49 - round;
                assertThat(ship(one, "sale-" + round)).isInstanceOf(LedgerResult.Applied.class);
                assertThat(within(PATIENCE, () -> page(server, itea.key()).contains(left + " now")))
                        .isTrue();
                cutConnections();
                String name = "Itea virginica 'Seedling " + round + "'";
                load("more.csv", "name,source\n\"" + name + "\",from memory\n");
                assertThat(within(PATIENCE, () -> isFound(two, name)))
                        .as("found by the other server's index, which nobody told")
                        .isTrue();
            }
            assertThat(ship(two, "sale-1"))
                    .as("the same entry sent to the other server")
                    .isInstanceOf(LedgerResult.AlreadyApplied.class);
            assertThat(within(
                            PATIENCE,
                            () -> one.index().revision().equals(two.catalog().revision())))
                    .isTrue();
        }
    }

    /// Asks the index alone and does not have it look at the catalog, as an answer to a need would.
    private static boolean isFound(Benchleaf benchleaf, String name) {
        return benchleaf.names().find(name, 1).stream()
                .anyMatch(hit ->
                        hit.matched().contains("Seedling") && hit.matched().equals(name));
    }

    @Test
    void neitherSellsWhatTheOtherHasSold() throws Exception {
        load("last.csv", "lot,name,size,count\nC1,Clethra alnifolia,#3,40\n");
        try (Benchleaf one = open("one");
                Benchleaf two = open("two")) {
            List<Thread> sellers = List.of(sell(one, "one"), sell(two, "two"));
            for (Thread seller : sellers) {
                seller.join();
            }
            assertThat(one.ledger().lot("C1").orElseThrow().count()).isZero();
            assertThat(one.ledger().history("C1", 1000)).hasSize(41);
        }
    }

    private static Thread sell(Benchleaf benchleaf, String seller) {
        return Thread.ofPlatform().start(() -> {
            for (int plant = 0; plant < 40; plant++) {
                benchleaf
                        .ledger()
                        .record(LedgerEntry.of("C1", new StockEvent.Shipped(1), seller, "", seller + "-" + plant));
            }
        });
    }
}
