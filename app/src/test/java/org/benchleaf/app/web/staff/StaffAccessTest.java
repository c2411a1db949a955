package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Main;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.web.Routes;
import org.benchleaf.app.web.Server;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Who gets in, over HTTP.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StaffAccessTest {
    private Path shop = Path.of("");
    private Benchleaf benchleaf;
    private Server server;

    @BeforeAll
    void serve(@TempDir Path folder) throws IOException {
        shop = folder.resolve("shop");
        StringWriter said = new StringWriter();
        int code = Main.run(
                new Console(new PrintWriter(said), new PrintWriter(said)),
                Clock.systemDefaultZone(),
                "new",
                shop.toString(),
                "--base",
                "https://plants.example");
        assertThat(code).as(said.toString()).isZero();
        Path settings = shop.resolve("settings.properties");
        Files.writeString(settings, Files.readString(settings).replaceAll("(?m)^proxy =.*$", "proxy = 127.0.0.1"));
        benchleaf = Benchleaf.open(shop, Clock.systemDefaultZone());
        server = Server.start(benchleaf, "127.0.0.1", 0);
        benchleaf.accounts().add("Olive", Role.OWNER, StaffClient.PASSWORD.toCharArray(), new Actor("t", "t"));
    }

    @AfterAll
    void stop() {
        server.close();
        benchleaf.close();
    }

    private StaffClient stranger() {
        return StaffClient.stranger(server.port());
    }

    private HttpResponse<String> signIn(String name, String password, String next)
            throws IOException, InterruptedException {
        return stranger().post("/staff/sign-in", "name", name, "password", password, "next", next);
    }

    @Test
    void signingInSetsACookieThatNoScriptReadsAndNoOtherSiteSends() throws IOException, InterruptedException {
        HttpResponse<String> in = signIn("Olive", StaffClient.PASSWORD, "");
        assertThat(StaffClient.led(in)).isEqualTo("/desk");
        assertThat(in.headers().firstValue("Set-Cookie").orElseThrow())
                .matches("benchleaf=[A-Za-z0-9_-]{43}; Path=/; Max-Age=604800; HttpOnly; SameSite=Strict");
        assertThat(in.headers().firstValue("Cache-Control")).contains("no-store");
    }

    @Test
    void aWrongPasswordSaysNotWhetherTheNameIsKnown() throws IOException, InterruptedException {
        HttpResponse<String> known = signIn("Olive", "not the password at all", "");
        HttpResponse<String> unknown = signIn("Olivia", "not the password at all", "");
        assertThat(known.statusCode()).isEqualTo(401);
        assertThat(known.body()).contains("Name and password do not fit each other");
        assertThat(unknown.body().replace("Olivia", "Olive")).isEqualTo(known.body());
        assertThat(known.headers().map()).doesNotContainKey("set-cookie");
    }

    @Test
    void signingInLeadsBackToThePageThatWasAskedForAndNeverToAnotherSite() throws IOException, InterruptedException {
        assertThat(StaffClient.led(stranger().get("/desk"))).isEqualTo("/staff/sign-in?next=%2Fdesk");
        assertThat(StaffClient.led(signIn("Olive", StaffClient.PASSWORD, "/desk?done=x")))
                .isEqualTo("/desk?done=x");
        for (String elsewhere : List.of(
                "https://elsewhere.example",
                "//elsewhere.example",
                "/desk\\..//elsewhere",
                "javascript:alert(1)",
                "/deskx")) {
            assertThat(StaffClient.led(signIn("Olive", StaffClient.PASSWORD, elsewhere)))
                    .isEqualTo("/desk");
        }
    }

    @Test
    void aFormOfAnotherSiteSignsNobodyIn() throws IOException, InterruptedException {
        for (String origin : List.of("https://elsewhere.example", "null", "")) {
            HttpResponse<String> in =
                    stranger().forged("/staff/sign-in", "", origin, "name", "Olive", "password", StaffClient.PASSWORD);
            assertThat(in.statusCode()).isEqualTo(403);
            assertThat(in.headers().map()).doesNotContainKey("set-cookie");
        }
    }

    @Test
    void signingOutEndsTheSessionAndNotOnlyTheCookie() throws IOException, InterruptedException {
        StaffClient olive = StaffClient.of(benchleaf, server.port(), "Olive", Role.OWNER);
        assertThat(olive.get("/desk").statusCode()).isEqualTo(200);
        HttpResponse<String> out = olive.post("/staff/sign-out");
        assertThat(out.headers().firstValue("Set-Cookie").orElseThrow()).contains("benchleaf=; Path=/; Max-Age=0");
        assertThat(StaffClient.led(olive.get("/desk"))).startsWith("/staff/sign-in");
    }

    @Test
    void manyFailedTriesAreHeldOffAndThePageSaysForHowLong() throws IOException {
        benchleaf.accounts().add("Guessed", Role.VIEWER, StaffClient.PASSWORD.toCharArray(), new Actor("t", "t"));
        for (int attempt = 0; attempt < 8; attempt++) {
            assertThat(guess("wrong")).startsWith("HTTP/1.1 401");
        }
        assertThat(guess(StaffClient.PASSWORD))
                .startsWith("HTTP/1.1 429")
                .contains("Retry-After: ")
                .contains("Too many tries failed")
                .containsPattern("looked at in \\d+ seconds");
    }

    /// From an address of its own, so that the others are not held up.
    private String guess(String password) throws IOException {
        return raw(
                "POST",
                "plants.example",
                "X-Forwarded-For: 203.0.113.50\r\nX-Forwarded-Proto: https\r\nOrigin: https://plants.example\r\n",
                "name=Guessed&password=" + StaffClient.encoded(password));
    }

    @Test
    void aChangeNeedsTheTokenOfItsOwnSessionAndAPageOfThisServer() throws IOException, InterruptedException {
        StaffClient olive = StaffClient.of(benchleaf, server.port(), "Olive", Role.OWNER);
        StaffClient other = StaffClient.of(benchleaf, server.port(), "Olive", Role.OWNER);
        String here = "http://127.0.0.1:" + server.port();
        assertThat(olive.forged("/staff/sign-out", "", here).statusCode()).isEqualTo(403);
        assertThat(olive.forged("/staff/sign-out", other.formToken(), here).statusCode())
                .isEqualTo(403);
        assertThat(olive.forged("/staff/sign-out", olive.formToken(), "https://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(olive.forged("/staff/sign-out", olive.formToken(), "").statusCode())
                .isEqualTo(403);
        assertThat(olive.get("/desk").statusCode()).isEqualTo(200);
    }

    @TestFactory
    Stream<DynamicTest> everyRoleGetsWhatItsRightsSayAndNothingElse() {
        Map<Role, StaffClient> clients = new TreeMap<>();
        List<Route> routes = Routes.of(benchleaf).routes().stream()
                .filter(route -> route.access() instanceof Access.SignedIn)
                .toList();
        assertThat(routes).isNotEmpty();
        List<DynamicTest> tests = new ArrayList<>();
        for (Role role : Role.values()) {
            for (Route route : routes) {
                Right right = ((Access.SignedIn) route.access()).right();
                boolean may = StaffRights.of(role).contains(right);
                tests.add(DynamicTest.dynamicTest(
                        role.term() + (may ? " may " : " may not ") + route.verb() + " " + route.path(), () -> {
                            StaffClient client = clients.computeIfAbsent(
                                    role, some -> StaffClient.of(benchleaf, server.port(), "The " + role.term(), role));
                            String path = route.path().replaceAll("\\{[a-z]+}", "none");
                            HttpResponse<String> answer =
                                    route.verb() == Route.Verb.GET ? client.get(path) : client.post(path);
                            if (may) {
                                assertThat(answer.statusCode())
                                        .isNotIn(401, 403)
                                        .isLessThan(500);
                            } else {
                                assertThat(answer.statusCode()).isEqualTo(403);
                            }
                            if (benchleaf
                                    .accounts()
                                    .sessions("The " + role.term())
                                    .isEmpty()) {
                                clients.remove(role); // it signed itself out
                            }
                        }));
            }
        }
        return tests.stream();
    }

    @Test
    void staffPagesAnswerOnlyWhereNobodyCanListen() throws IOException {
        assertThat(raw("localhost:" + server.port(), "")).startsWith("HTTP/1.1 200");
        // a name of elsewhere that leads here
        assertThat(raw("elsewhere.example", ""))
                .startsWith("HTTP/1.1 403")
                .contains("taken only where nobody can listen")
                .contains("proxy =");
        // a proxy that speaks no TLS to the browser, and one that came under another name
        assertThat(raw("plants.example", "X-Forwarded-For: 203.0.113.9\r\n")).startsWith("HTTP/1.1 403");
        assertThat(raw("plants.example", "X-Forwarded-For: 203.0.113.9\r\nX-Forwarded-Proto: http\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("elsewhere.example", "X-Forwarded-For: 203.0.113.9\r\nX-Forwarded-Proto: https\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("plants.example", "X-Forwarded-For: 203.0.113.9\r\nX-Forwarded-Proto: https\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void overTlsTheCookieGoesOverTlsOnlyAndTheLogKnowsThePersonsAddress() throws IOException {
        String in = raw(
                "POST",
                "plants.example",
                "X-Forwarded-For: 198.51.100.7, 203.0.113.9\r\nX-Forwarded-Proto: https\r\n"
                        + "Origin: https://plants.example\r\n",
                "name=Olive&password=" + StaffClient.encoded(StaffClient.PASSWORD));
        assertThat(in)
                .startsWith("HTTP/1.1 303")
                .containsPattern(
                        "Set-Cookie: __Host-benchleaf=[^;]+; Path=/; Max-Age=604800; HttpOnly; SameSite=Strict; Secure");
        assertThat(benchleaf.accounts().log(Long.MAX_VALUE, 20))
                .anyMatch(line ->
                        line.act().equals("signed.in") && line.actor().equals(new Actor("Olive", "203.0.113.9")));
    }

    private String raw(String host, String headers) throws IOException {
        return raw("GET", host, headers, "");
    }

    /// As no browser and no client would send it.
    private String raw(String method, String host, String headers, String body) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            Writer out = new java.io.OutputStreamWriter(socket.getOutputStream(), StandardCharsets.UTF_8);
            out.write(method + " /staff/sign-in HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n" + headers
                    + (body.isEmpty()
                            ? ""
                            : "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                                    + "\r\n")
                    + "\r\n" + body);
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void whatEachRoleMayIsPrintedForPeople() throws IOException {
        assertThat(Files.readString(Path.of("..", "docs", "staff.md"))).contains(StaffRights.table());
    }
}
