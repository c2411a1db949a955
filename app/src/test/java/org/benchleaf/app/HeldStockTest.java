package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.benchleaf.app.web.Server;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.measure.YearWeek;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What is held is promised to nobody else, on the page and in answers, and is again when the hold has ended.
class HeldStockTest {
    @TempDir
    Path folder;

    private final Passing clock = new Passing();
    private String shop = "";

    /// A clock that the test puts forward.
    private static final class Passing extends Clock {
        private Instant now = Run.NOVEMBER.instant();

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return Run.NOVEMBER.getZone();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("the shop has one zone");
        }
    }

    @BeforeEach
    void makeShop() throws IOException {
        shop = folder.resolve("shop").toString();
        assertThat(Run.benchleaf("new", shop).code()).isZero();
        load("plants.csv", "name,source\nItea virginica,from memory\nClethra alnifolia,from memory\n");
        load("stock.csv", """
                lot,name,size,count,place,ready_week,price,condition,seen_on
                S1,Itea virginica,#3,50,B4-12,,18.50,full fall color,2026-11-16
                S2,Itea virginica,#3,60,H2-1,2027-W14,18.50,,
                """);
    }

    private void load(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, content);
        assertThat(Run.benchleaf("load", file.toString(), "--workspace", shop).code())
                .isZero();
    }

    private void hold(Benchleaf benchleaf, int quantity, Duration time) {
        StockEvent held =
                new StockEvent.Held(quantity, Optional.of(clock.instant().plus(time)));
        benchleaf.ledger().record(LedgerEntry.of("S1", held, "Ruth", "Green Acres", "hold-" + quantity));
        benchleaf.afterChange();
    }

    private static NeedAnswer fortyInNumberThree(Benchleaf benchleaf) {
        NeedReading reading = benchleaf.needReader().read("40 in #3", benchleaf.today());
        return benchleaf.needSearch().answer(NeedQuery.of(reading.need(), YearWeek.of(benchleaf.today())));
    }

    @Test
    void needsFindWhatAHoldHasGivenBackAlthoughNothingWasWritten() throws InterruptedException {
        try (Benchleaf benchleaf = Benchleaf.open(Path.of(shop), clock)) {
            assertThat(fortyInNumberThree(benchleaf).meetAll()).isEqualTo(1);
            hold(benchleaf, 20, Duration.ofHours(2));
            assertThat(fortyInNumberThree(benchleaf).meetAll()).isZero();
            clock.now = clock.now.plus(Duration.ofHours(2));
            Thread.sleep(150); // an index looks at the catalog ten times a second
            assertThat(fortyInNumberThree(benchleaf).meetAll()).isEqualTo(1);
        }
    }

    @Test
    void pagesShowWhatIsFreeWhatComesOnAndWhenItWasSeen() throws Exception {
        try (Benchleaf benchleaf = Benchleaf.open(Path.of(shop), clock);
                Server server = Server.start(benchleaf, "127.0.0.1", 0)) {
            hold(benchleaf, 20, Duration.ofHours(2));
            String key = benchleaf.plantFinder().find("Itea virginica").key().text();
            assertThat(page(server, "/p/" + key))
                    .contains("30 now")
                    .contains("60 more from the week of 5 April 2027")
                    .contains("full fall color, seen 16 November 2026")
                    .contains("Stock as of 25 November 2026, 10:00");
            assertThat(page(server, "/")).contains("1 plant can be had now. Stock as of 25 November 2026, 10:00.");
            hold(benchleaf, 30, Duration.ofHours(2));
            assertThat(page(server, "/")).contains("0 plants can be had now.");
            clock.now = clock.now.plus(Duration.ofHours(2));
            assertThat(page(server, "/p/" + key)).contains("50 now").contains("Stock as of 25 November 2026, 12:00");
            assertThat(page(server, "/")).contains("1 plant can be had now. Stock as of 25 November 2026, 12:00.");
        }
    }

    private static String page(Server server, String path) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + server.port() + path);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
