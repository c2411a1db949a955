package org.benchleaf.app.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What telephones send, and what others send instead.
class SightingsApiTest {
    private final HttpClient http = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    private WalkShop shop;

    @BeforeEach
    void open() {
        shop = WalkShop.open(folder, WalkShop.PLANTS, WalkShop.STOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private HttpRequest.Builder post(String path, byte[] body) {
        return HttpRequest.newBuilder(URI.create(shop.at(path)))
                .header("Cookie", "walker=Ann")
                .header("Origin", shop.at(""))
                .header("Form-Token", "form-token-of-Ann")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> send(String sightings) throws IOException, InterruptedException {
        return send(post("/walk/sightings", sightings.getBytes(StandardCharsets.UTF_8)));
    }

    private String sighting(String key, String more) {
        String plant = shop.benchleaf()
                .ledger()
                .lot("S0003")
                .orElseThrow()
                .item()
                .plant()
                .text();
        return """
                {"key": "%s", "walk": {"key": "walk-0001", "startedAt": "%s"}, "plant": "%s", "lot": "S0003",
                 "seenAt": "%s", %s}""".formatted(
                key, Instant.now().minusSeconds(60), plant, Instant.now().minusSeconds(10), more);
    }

    private Path photograph(String key) {
        return shop.folder().resolve("photographs").resolve("walk-" + key + ".jpg");
    }

    @Test
    void oneThatCannotBeReadDoesNotHoldBackTheOthers() throws Exception {
        String answer = send("[" + sighting("sighting-1", "\"count\": \"many\"") + ","
                        + sighting("sighting-2", "\"conditions\": [\"ON_FIRE\"]") + ","
                        + sighting("sighting-3", "\"count\": 44") + ", 7]")
                .body();

        assertThat(answer)
                .contains("\"key\":\"sighting-1\"")
                .contains("without a sound \\\"count\\\"")
                .contains("ON_FIRE");
        assertThat(answer.split("refused", -1)).hasSize(4);
        assertThat(shop.count("S0003")).isEqualTo(44);
    }

    @Test
    void whatIsNoListIsTurnedAway() throws Exception {
        assertThat(send("{").statusCode()).isEqualTo(400);
        assertThat(send("").statusCode()).isEqualTo(400);
        assertThat(send("{\"key\": 1}").statusCode()).isEqualTo(400);
        assertThat(send("[" + " ".repeat(1024 * 1024) + "]").statusCode()).isEqualTo(413);
    }

    @Test
    void strangersAndPagesOfOthersSendNothing() throws Exception {
        byte[] body = ("[" + sighting("sighting-1", "\"count\": 44") + "]").getBytes(StandardCharsets.UTF_8);
        HttpRequest.Builder stranger = HttpRequest.newBuilder(URI.create(shop.at("/walk/sightings")))
                .POST(HttpRequest.BodyPublishers.ofByteArray(body));

        assertThat(send(stranger).statusCode()).isEqualTo(303);
        assertThat(send(post("/walk/sightings", body).setHeader("Origin", "https://elsewhere.example"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(send(post("/walk/sightings", body).setHeader("Form-Token", "guessed"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(shop.count("S0003")).isEqualTo(48);
    }

    @Test
    void thePlaceIsTakenOutOfAPhotograph() throws Exception {
        byte[] sent = Pictures.withPlace();
        assertThat(new String(sent, StandardCharsets.ISO_8859_1)).contains("Exif");

        assertThat(send(post("/walk/photographs/sighting-1", sent)).body()).isEqualTo("{\"kept\":true}");

        String kept = Files.readString(photograph("sighting-1"), StandardCharsets.ISO_8859_1);
        assertThat(kept).startsWith("\u00ff\u00d8").doesNotContain("Exif").doesNotContain("MM\0*");
    }

    @Test
    void aPictureThatWouldUnfoldToGigabytesIsNotUnfolded() throws Exception {
        HttpResponse<String> answer = send(post("/walk/photographs/sighting-1", Pictures.bomb()));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("refused").contains("60000 × 60000");
        assertThat(photograph("sighting-1")).doesNotExist();
    }

    @Test
    void aPhotographCannotBeWrittenAnywhereElse() throws Exception {
        for (String key : new String[] {"..%2F..%2Fsettings", "%2e%2e%2fx-longer", "a%00bcdefghij", "short"}) {
            assertThat(send(post("/walk/photographs/" + key, Pictures.withPlace()))
                            .statusCode())
                    .as(key)
                    .isIn(400, 404);
        }
        try (Stream<Path> files = Files.list(shop.folder().resolve("photographs"))) {
            assertThat(files).isEmpty();
        }
    }
}
