package org.benchleaf.app.web.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

/// What a route's rules say is what happens, over real HTTP.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RouterTest {
    private static final Access LOOK = new Access.SignedIn(Right.LOOK);
    private static final Access EDIT = new Access.SignedIn(Right.EDIT);
    private static final Access PROGRAM = new Access.Token(Right.EDIT);

    private static final RouteTable TABLE = new RouteTable(List.of(
            Route.get("/open", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, RouterTest::greet),
            Route.get("/photo/{file}", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, RouterTest::greet),
            Route.get("/asset.js", Access.EVERYONE, Keeping.FOREVER, Headers.FILE, RouterTest::greet),
            Route.get("/door", Access.DOOR, Keeping.NEVER, Headers.PAGE, RouterTest::greet),
            Route.post("/door", Access.DOOR, Headers.PAGE, RouterTest::greet),
            Route.get("/desk", LOOK, Keeping.NEVER, Headers.SCRIPTED, RouterTest::greet),
            Route.get("/names", LOOK, Keeping.ASK_FIRST_PRIVATELY, Headers.WALK, RouterTest::greet),
            Route.post("/desk", EDIT, Headers.SCRIPTED, RouterTest::greet),
            Route.post("/import", EDIT, Headers.SCRIPTED, RouterTest::size).upTo(200 * 1024),
            Route.get("/api/count", PROGRAM, Keeping.NEVER, Headers.FILE, RouterTest::greet),
            Route.change(Route.Verb.PUT, "/api/count", PROGRAM, Headers.FILE, RouterTest::greet),
            Route.get("/worker.js", Access.EVERYONE, Keeping.ASK_FIRST, Headers.WORKER, RouterTest::greet),
            Route.get(
                    "/wordy",
                    Access.EVERYONE,
                    Keeping.ASK_FIRST,
                    Headers.PAGE,
                    request -> Reply.page("words ".repeat(2000))),
            Route.get("/fails", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, request -> {
                throw new IllegalStateException("planted");
            }),
            Route.get(
                    "/long",
                    LOOK,
                    Keeping.NEVER,
                    Headers.FILE,
                    request -> Reply.stream("text/csv", out -> {
                                out.write("a,b\n".getBytes(StandardCharsets.UTF_8));
                                out.write("1,2\n".getBytes(StandardCharsets.UTF_8));
                            })
                            .download("Weiß \"1\".csv"))));

    /// Knows two cookies and a token.
    private static final Guard GUARD = new Guard() {
        @Override
        public Optional<Reply> refused(Request request) {
            return request.header("Plain-Line").map(plain -> Reply.status(403));
        }

        @Override
        public Optional<Identity> bySession(Request request) {
            return request.cookie("who")
                    .map(name -> new Identity(
                            name,
                            name.equals("editor") ? Set.of(Right.LOOK, Right.EDIT) : Set.of(Right.LOOK),
                            name + "-7f"));
        }

        @Override
        public Optional<Identity> byToken(Request request, String token) {
            return token.equals("good")
                    ? Optional.of(new Identity("program", Set.of(Right.EDIT), ""))
                    : Optional.empty();
        }

        @Override
        public Reply signIn(Request request) {
            return Reply.seeOther("/door");
        }
    };

    private final HttpClient http = HttpClient.newHttpClient();
    private Router router;

    @BeforeAll
    void start() {
        Troubles troubles =
                (request, status, problem) -> Reply.page("trouble " + status).withStatus(status);
        router = Router.start(TABLE, GUARD, troubles, URI.create("https://plants.example"), "127.0.0.1", 0);
    }

    @AfterAll
    void stop() {
        router.close();
    }

    private static Reply greet(Request request) {
        String name = request.identity().map(Identity::name).orElse("nobody");
        return Reply.page("hello " + name).with(new Reply.Cookie("seen", "1", Duration.ofHours(1), true));
    }

    private static Reply size(Request request) {
        return Reply.page("read " + request.body().length);
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + router.port() + path));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static HttpRequest.BodyPublisher form(String body) {
        return HttpRequest.BodyPublishers.ofString(body);
    }

    private HttpRequest.Builder fromDesk(String who, String body) {
        return to("/desk")
                .header("Cookie", "who=" + who)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(form(body));
    }

    @TestFactory
    Stream<DynamicTest> everyRouteAnswersWithTheHeadersOfItsRuleWhoeverAsks() {
        return TABLE.routes().stream()
                .map(route -> DynamicTest.dynamicTest(route.verb() + " " + route.path(), () -> {
                    for (String cookie : List.of("", "who=reader", "who=editor")) {
                        HttpRequest.Builder request = to(route.path().replace("{file}", "itea.jpg"))
                                .method(
                                        route.verb().name(),
                                        route.mostBytes() == 0 ? HttpRequest.BodyPublishers.noBody() : form("a=b"));
                        HttpResponse<String> response =
                                send(cookie.isEmpty() ? request : request.header("Cookie", cookie));
                        route.headers()
                                .all()
                                .forEach((name, value) -> assertThat(
                                                response.headers().allValues(name))
                                        .containsExactly(value));
                        if (response.body().startsWith("hello ")
                                && !response.body().endsWith("nobody")) {
                            assertThat(response.headers().firstValue("Cache-Control"))
                                    .get()
                                    .asString()
                                    .containsAnyOf("no-store", "private");
                        } else if (response.statusCode() == 200) {
                            assertThat(response.headers().firstValue("Cache-Control"))
                                    .contains(route.keeping().header());
                        } else if (response.statusCode() >= 400) {
                            assertThat(response.headers().firstValue("Cache-Control"))
                                    .contains("no-store");
                        }
                        assertThat(response.headers().firstValue("Server")).isEmpty();
                    }
                }));
    }

    @Test
    void somebodyUnknownIsSentToTheDoorAndAProgramIsToldToBringItsToken() {
        HttpResponse<String> desk = send(to("/desk"));
        assertThat(desk.statusCode()).isEqualTo(303);
        assertThat(desk.headers().firstValue("Location")).contains("/door");
        HttpResponse<String> api = send(to("/api/count"));
        assertThat(api.statusCode()).isEqualTo(401);
        assertThat(api.headers().firstValue("WWW-Authenticate")).contains("Bearer");
        assertThat(send(to("/api/count").header("Authorization", "Bearer bad")).statusCode())
                .isEqualTo(401);
        assertThat(send(to("/api/count").header("Authorization", "bearer good")).body())
                .isEqualTo("hello program");
    }

    @Test
    void aCookieIsNoTokenAndATokenNoCookie() {
        assertThat(send(to("/api/count").header("Cookie", "who=editor")).statusCode())
                .isEqualTo(401);
        assertThat(send(to("/desk").header("Authorization", "Bearer good")).statusCode())
                .isEqualTo(303);
    }

    @Test
    void whoMayNotIsTurnedAway() {
        assertThat(send(to("/desk").header("Cookie", "who=reader")).body()).isEqualTo("hello reader");
        HttpResponse<String> change =
                send(fromDesk("reader", "form-token=reader-7f").header("Origin", "https://plants.example"));
        assertThat(change.statusCode()).isEqualTo(403);
        assertThat(change.body()).isEqualTo("trouble 403");
    }

    @Test
    void onALineThatOthersHearOnlyOpenPagesAreAnswered() {
        assertThat(send(to("/open").header("Plain-Line", "1")).statusCode()).isEqualTo(200);
        for (String closed : List.of("/door", "/desk", "/api/count")) {
            assertThat(send(to(closed).header("Plain-Line", "1").header("Cookie", "who=editor"))
                            .statusCode())
                    .isEqualTo(403);
        }
    }

    @Test
    void aChangeNeedsThePageOfThisServerAndOfThisSession() {
        String ours = "https://plants.example";
        String token = "form-token=editor-7f";
        assertThat(send(fromDesk("editor", token).header("Origin", ours)).statusCode())
                .isEqualTo(200);
        assertThat(send(fromDesk("editor", token).header("Origin", "http://127.0.0.1:" + router.port()))
                        .statusCode())
                .as("reached by another name of its own")
                .isEqualTo(200);
        assertThat(send(fromDesk("editor", "").header("Origin", ours).header(Request.FORM_TOKEN_HEADER, "editor-7f"))
                        .statusCode())
                .as("as scripts send it")
                .isEqualTo(200);
        assertThat(send(fromDesk("editor", token)).statusCode()).as("no origin").isEqualTo(403);
        assertThat(send(fromDesk("editor", token).header("Origin", "null")).statusCode())
                .isEqualTo(403);
        assertThat(send(fromDesk("editor", token).header("Origin", "https://plants.example.evil.example"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(send(fromDesk("editor", "form-token=reader-7f").header("Origin", ours))
                        .statusCode())
                .as("the token of another session")
                .isEqualTo(403);
        assertThat(send(fromDesk("editor", "a=b").header("Origin", ours)).statusCode())
                .isEqualTo(403);
    }

    @Test
    void signingInNeedsAPageOfThisServer() {
        assertThat(send(to("/door").POST(form("a=b"))).statusCode()).isEqualTo(403);
        assertThat(send(to("/door").POST(form("a=b")).header("Origin", "https://plants.example"))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void whatIsTooLongOrDoesNotSayHowLongIsNotRead() {
        HttpRequest.Builder request = to("/import")
                .header("Cookie", "who=editor")
                .header("Origin", "https://plants.example")
                .header(Request.FORM_TOKEN_HEADER, "editor-7f");
        byte[] fits = new byte[200 * 1024];
        assertThat(send(request.copy().POST(HttpRequest.BodyPublishers.ofByteArray(fits)))
                        .body())
                .isEqualTo("read 204800");
        assertThat(send(request.copy().POST(HttpRequest.BodyPublishers.ofByteArray(new byte[200 * 1024 + 1])))
                        .statusCode())
                .isEqualTo(413);
        HttpRequest.BodyPublisher endless =
                HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(fits));
        assertThat(send(request.copy().POST(endless)).statusCode()).isEqualTo(411);
        assertThat(send(fromDesk("editor", "form-token=editor-7f&a=" + "x".repeat((int) Route.FORM))
                                .header("Origin", "https://plants.example"))
                        .statusCode())
                .isEqualTo(413);
    }

    @Test
    void whoIsRefusedMaySendToTheEndAndThenReadsWhy() throws IOException {
        byte[] tooLong = new byte[30 * 1024 * 1024];
        for (String head : List.of(
                "POST /import HTTP/1.1\r\nContent-Length: %d", // too long
                "POST /nowhere HTTP/1.1\r\nContent-Length: %d",
                "POST /desk HTTP/1.1\r\nContent-Length: %d",
                "POST /import HTTP/1.1\r\nPlain-Line: yes\r\nContent-Length: %d")) {
            try (Socket line = new Socket("127.0.0.1", router.port())) {
                line.setSoTimeout(20_000);
                OutputStream out = line.getOutputStream();
                out.write((head.formatted(tooLong.length) + "\r\nHost: plants.example\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
                out.write(tooLong); // breaks when the other end hangs up
                out.write("GET /open HTTP/1.1\r\nHost: plants.example\r\nConnection: close\r\n\r\n"
                        .getBytes(StandardCharsets.US_ASCII));
                String answers = new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

                assertThat(answers).as(head).startsWith("HTTP/1.1 4").contains("HTTP/1.1 200");
            }
        }
    }

    @Test
    void whoAsksBeforeSendingIsAnsweredAtOnce() {
        assertThat(send(to("/import")
                                .header("Cookie", "who=editor")
                                .POST(HttpRequest.BodyPublishers.ofByteArray(new byte[200 * 1024 + 1]))
                                .expectContinue(true))
                        .statusCode())
                .isEqualTo(413);
    }

    @Test
    void aPageIsNotSentTwiceAndAnsweredForSomebodyItIsNotKept() {
        HttpResponse<String> first = send(to("/open"));
        String tag = first.headers().firstValue("ETag").orElseThrow();
        for (String known : List.of(tag, "W/" + tag, "\"other\", " + tag)) {
            assertThat(send(to("/open").header("If-None-Match", known)).statusCode())
                    .isEqualTo(304);
        }
        assertThat(send(to("/open").header("If-None-Match", "\"other\"")).statusCode())
                .isEqualTo(200);
        HttpResponse<String> known = send(to("/open").header("Cookie", "who=reader"));
        assertThat(known.body()).isEqualTo("hello reader");
        assertThat(known.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(known.headers().firstValue("ETag")).isEmpty();
        assertThat(send(to("/names").header("Cookie", "who=reader")).headers().firstValue("ETag"))
                .isPresent();
    }

    @Test
    void aLongPageIsSqueezedForThoseWhoTakeItUnderATagOfItsOwn() throws Exception {
        HttpResponse<byte[]> squeezed = http.send(
                to("/wordy").header("Accept-Encoding", "br, gzip").build(), HttpResponse.BodyHandlers.ofByteArray());
        HttpResponse<String> plain = send(to("/wordy"));
        assertThat(new String(
                        new GZIPInputStream(new ByteArrayInputStream(squeezed.body())).readAllBytes(),
                        StandardCharsets.UTF_8))
                .isEqualTo(plain.body());
        assertThat(squeezed.body().length).isLessThan(plain.body().length() / 10);
        assertThat(squeezed.headers().firstValue("ETag"))
                .isPresent()
                .isNotEqualTo(plain.headers().firstValue("ETag"));
        assertThat(plain.headers().firstValue("Vary")).contains("Accept-Encoding");
        assertThat(send(to("/wordy")
                                .header("Accept-Encoding", "gzip")
                                .header(
                                        "If-None-Match",
                                        squeezed.headers().firstValue("ETag").orElseThrow()))
                        .statusCode())
                .isEqualTo(304);
    }

    @Test
    void headersAloneCanBeAskedForAndOtherWaysAreRefused() {
        HttpResponse<String> head = send(to("/open").method("HEAD", HttpRequest.BodyPublishers.noBody()));
        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(send(to("/open").POST(form("a=b"))).statusCode()).isEqualTo(405);
        HttpResponse<String> nowhere = send(to("/nowhere"));
        assertThat(nowhere.statusCode()).isEqualTo(404);
        assertThat(nowhere.headers().firstValue("Content-Security-Policy")).isPresent();
        assertThat(send(to("/OPEN")).statusCode()).as("printed in capitals").isEqualTo(200);
    }

    @Test
    void aFaultIsToldWithoutItsInsides() {
        HttpResponse<String> failed = send(to("/fails"));
        assertThat(failed.statusCode()).isEqualTo(500);
        assertThat(failed.body()).isEqualTo("trouble 500");
        assertThat(failed.headers().firstValue("Cache-Control")).contains("no-store");
    }

    @Test
    void aCookieIsOutOfReachOfScriptsAndOtherSitesAndALongAnswerIsWrittenBitByBit() {
        assertThat(send(to("/open")).headers().allValues("Set-Cookie"))
                .containsExactly("seen=1; Path=/; Max-Age=3600; HttpOnly; SameSite=Strict; Secure");
        HttpResponse<String> file = send(to("/long").header("Cookie", "who=reader"));
        assertThat(file.body()).isEqualTo("a,b\n1,2\n");
        assertThat(file.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"Wei_ _1_.csv\"; filename*=UTF-8''Wei%C3%9F%20%221%22.csv");
    }

    @Test
    void aTableWhoseRulesContradictEachOtherIsNotMade() {
        Route open = Route.get("/p/{key}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, RouterTest::greet);
        Route same = Route.get("/p/{name}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, RouterTest::greet);
        assertThatThrownBy(() -> new RouteTable(List.of(open, same))).hasMessage("two routes answer GET /p/{}");
        assertThatThrownBy(() -> Route.post("/open", Access.EVERYONE, Headers.PAGE, RouterTest::greet))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Route.get("/desk", LOOK, Keeping.ASK_FIRST, Headers.PAGE, RouterTest::greet))
                .hasMessage("route /desk is not for everyone and so is not kept for everyone");
        assertThatThrownBy(() -> new Route(
                        Route.Verb.POST,
                        "/desk",
                        EDIT,
                        Forgery.ORIGIN,
                        Keeping.NEVER,
                        Headers.PAGE,
                        Route.FORM,
                        RouterTest::greet))
                .hasMessage("route /desk is changed by a browser: ORIGIN_AND_TOKEN");
    }
}
