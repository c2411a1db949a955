package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.app.web.Server;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// The page that answers needs, as a browser without script sees it.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FindPageTest {
    // facts from memory
    private static final String PLANTS = """
            name,common_names,life_form,foliage,hardiness,height,exposure,fall_color,fall_months,source
            Itea virginica,Virginia sweetspire,shrub,deciduous,5-9,3-5 ft,full sun; part shade; full shade,red #B8272F,Oct-Nov,from memory
            Itea virginica 'Henry''s Garnet',,,,,3-4 ft,,,,from memory
            Fothergilla gardenii,dwarf witchalder,shrub,deciduous,5-8,2-3 ft,full sun; part shade,orange #E08038,Oct-Nov,from memory
            Corylopsis spicata,spike winterhazel,shrub,deciduous,5-8,6-10 ft,part shade,yellow #E3C34A,Oct,from memory
            Taxus ×media,Anglo-Japanese yew,shrub; conifer,evergreen,4-7,10-12 ft,full sun; full shade,none,,from memory
            """;
    private static final String STOCK = """
            lot,name,size,count,price
            L1,Itea virginica,#3,60,$18.50
            L2,Itea virginica 'Henry''s Garnet',#3,8,$21.50
            L3,Fothergilla gardenii,#3,55,$24.00
            """;

    private final HttpClient http = HttpClient.newHttpClient();

    @TempDir
    private Path folder;

    private Benchleaf benchleaf;
    private Server server;

    @BeforeAll
    void serve() throws IOException {
        Path shop = folder.resolve("shop");
        assertThat(Run.benchleaf("new", shop.toString(), "--shop", "Test <nursery>")
                        .code())
                .isZero();
        for (String list : new String[] {PLANTS, STOCK}) {
            Path file = Files.writeString(
                    folder.resolve(list == PLANTS ? "plants.csv" : "stock.csv"), list.replace("''", "'"));
            assertThat(Run.benchleaf("load", file.toString(), "--workspace", shop.toString())
                            .code())
                    .isZero();
        }
        benchleaf = Benchleaf.open(shop, Run.NOVEMBER);
        server = Server.start(benchleaf, "127.0.0.1", 0);
    }

    @AfterAll
    void stop() {
        server.close();
        benchleaf.close();
    }

    @Test
    void aNeedIsAnsweredWithAReasonForEveryWish() throws IOException, InterruptedException {
        String page = find("fall color, zone 6, part shade, under 5 ft, 40 in #3");
        assertThat(page)
                .contains("2 meet every wish")
                .contains("Virginia sweetspire")
                .contains("#3: 60 now, $18.50")
                .contains("reason--met");
        assertThat(page.indexOf("Fothergilla gardenii")).isPositive();
        assertThat(page).doesNotContain("<script").contains("name=\"viewport\"");
    }

    @Test
    void everyWishThatWasReadCanBeTakenOffWithoutTypingAgain() throws IOException, InterruptedException {
        String page = find("fall color, zone 6, part shade, under 5 ft, 40 in #3");
        Matcher off = Pattern.compile("class=\"wish-off\" href=\"([^\"]+)\"").matcher(page);
        int wishes = 0;
        while (off.find()) {
            wishes++;
            String without = get(off.group(1).replace("&amp;", "&")).body();
            assertThat(without.split("wish-off\" href", -1)).hasSize(5);
        }
        assertThat(wishes).isEqualTo(5);
    }

    @Test
    void aChoiceBesideTheAnswerLeavesAsManyPlantsAsItSays() throws IOException, InterruptedException {
        String page = find("zone 6");
        Matcher choice = Pattern.compile("<a href=\"([^\"]+)\">evergreen <span class=\"choice-count\">(\\d+)</span>")
                .matcher(page);
        assertThat(choice.find()).isTrue();
        String narrowed = get(choice.group(1).replace("&amp;", "&")).body();
        assertThat(narrowed).contains(choice.group(2) + " meet every wish").contains("Taxus");
        assertThat(choice.group(2)).isEqualTo("1");
    }

    @Test
    void aNameAsItSoundsFindsItsPlant() throws IOException, InterruptedException {
        assertThat(find("korry lopsis spicata"))
                .contains("Plants with such a name")
                .contains("Corylopsis spicata");
    }

    @Test
    void whyAPlantIsNoAnswerCanBeAsked() throws IOException, InterruptedException {
        String page = get("/find?q=" + encoded("zone 8, under 5 ft") + "&plant=" + encoded("Taxus media"))
                .body();
        assertThat(page).contains("Why not this one").contains("reason--missed");
    }

    @Test
    void wordsThatAreMarkupAreShownAndNeverRun() throws IOException, InterruptedException {
        String hostile = "\"><script>alert(1)</script> zone 6";
        String page = find(hostile);
        assertThat(page).doesNotContain("<script>").contains("&lt;script&gt;");
        assertThat(get("/find?q=zone+6&with=" + encoded("<script>") + "&skip=-5&plant=" + encoded("<b>"))
                        .body())
                .doesNotContain("<script>")
                .doesNotContain("<b>");
    }

    @Test
    void thePageIsNotSentTwiceWhileNothingChanged() throws IOException, InterruptedException {
        HttpResponse<String> first = get("/find?q=zone+6");
        HttpRequest again = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/find?q=zone+6"))
                .header("If-None-Match", first.headers().firstValue("ETag").orElseThrow())
                .build();
        assertThat(http.send(again, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(304);
        assertThat(first.headers().map()).doesNotContainKey("set-cookie");
    }

    private String find(String words) throws IOException, InterruptedException {
        HttpResponse<String> page = get("/find?q=" + encoded(words));
        assertThat(page.statusCode()).isEqualTo(200);
        return page.body();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
