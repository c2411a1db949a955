package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Main;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.app.web.route.RouteTable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Every address of the real server obeys its rules, and people can read them in `docs/routes.md`.
///
/// After a change of the table: `BENCHLEAF_WRITE_DOCS=1` and this test writes the table anew.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoutesTest {
    private static final String START = "<!-- routes -->\n";
    private static final String END = "<!-- /routes -->";

    private final HttpClient http = HttpClient.newHttpClient();
    private Benchleaf benchleaf;
    private RouteTable table;
    private Server server;

    @BeforeAll
    void serve(@TempDir Path folder) {
        Path shop = folder.resolve("shop");
        int code = Main.run(
                new Console(new PrintWriter(System.err), new PrintWriter(System.err)),
                Clock.systemDefaultZone(),
                "new",
                shop.toString());
        assertThat(code).isZero();
        benchleaf = Benchleaf.open(shop, Clock.systemDefaultZone());
        table = Routes.of(benchleaf);
        server = Server.start(benchleaf, "127.0.0.1", 0);
    }

    @AfterAll
    void stop() {
        server.close();
        benchleaf.close();
    }

    @TestFactory
    Stream<DynamicTest> anAddressAnswersStrangersAsItsRuleSays() {
        return table.routes().stream()
                .map(route -> DynamicTest.dynamicTest(
                        route.verb() + " " + route.path(), () -> obeysItsRule(route, ask(route, ""))));
    }

    private static void obeysItsRule(Route route, HttpResponse<byte[]> response) {
        route.headers()
                .all()
                .forEach((name, value) ->
                        assertThat(response.headers().allValues(name)).containsExactly(value));
        assertThat(response.headers().allValues("Set-Cookie"))
                .as("strangers get no cookie")
                .isEmpty();
        assertThat(response.statusCode()).isLessThan(500);
        if (response.statusCode() == 200) {
            assertThat(route.access()).isIn(Access.EVERYONE, Access.DOOR);
            assertThat(response.headers().firstValue("Cache-Control"))
                    .contains(route.keeping().header());
            assertThat(response.headers().firstValue("ETag").isPresent()).isEqualTo(route.keeping() != Keeping.NEVER);
        } else {
            assertThat(response.headers().firstValue("Cache-Control")).contains("no-store");
        }
        if (route.access() instanceof Access.SignedIn || route.access() instanceof Access.Token) {
            assertThat(response.statusCode()).isIn(303, 401, 403);
        }
    }

    @TestFactory
    Stream<DynamicTest> aPageOfAnotherSiteChangesNothing() {
        return table.routes().stream()
                .filter(route -> route.verb() != Route.Verb.GET)
                .map(route -> DynamicTest.dynamicTest(
                        route.verb() + " " + route.path(),
                        () -> assertThat(ask(route, "https://elsewhere.example").statusCode())
                                .isIn(303, 401, 403)));
    }

    private HttpResponse<byte[]> ask(Route route, String origin) throws IOException, InterruptedException {
        String path = route.path().replaceAll("\\{[a-z]+}", "none");
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .method(
                        route.verb().name(),
                        route.verb() == Route.Verb.GET
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString("a=b"));
        if (!origin.isEmpty()) {
            request.header("Origin", origin);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void theTableIsPrintedForPeople() throws IOException {
        Path doc = Path.of("..", "docs", "routes.md");
        String text = Files.readString(doc);
        String printed = text.substring(text.indexOf(START) + START.length(), text.indexOf(END));
        if (System.getenv("BENCHLEAF_WRITE_DOCS") != null) {
            Files.writeString(doc, text.replace(START + printed, START + table.text()));
            printed = table.text();
        }
        assertThat(printed).isEqualTo(table.text());
    }
}
