package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import org.benchleaf.app.Shop;
import org.benchleaf.app.Workspace;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// The public pages of the invented grower over real HTTP: what shoppers, searchers and programs get.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PublicPagesTest {
    /// Design rule of the project: a cheap telephone on a slow line.
    private static final int HEAVIEST = 120 * 1024;

    private static final Pattern DATA =
            Pattern.compile("<script type=\"application/ld\\+json\">(.*?)</script>", Pattern.DOTALL);

    private final ObjectMapper json = new ObjectMapper();
    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.demo(folder);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    @Test
    void everyPageIsLightNeedsNoCookieAndIsNotSentTwice() {
        for (String path : List.of(
                "/",
                "/available",
                "/find?q=evergreen+screen+zone+5",
                "/compare?p=" + key("Itea virginica") + "&p=" + key("Clethra alnifolia"),
                shop.plant("Itea virginica"))) {
            var page = shop.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(page.body().getBytes(StandardCharsets.UTF_8).length)
                    .as(path)
                    .isLessThan(HEAVIEST);
            assertThat(page.headers().map()).doesNotContainKey("set-cookie");
            assertThat(shop.get(
                                    path,
                                    "If-None-Match",
                                    page.headers().firstValue("ETag").orElseThrow())
                            .statusCode())
                    .as(path)
                    .isEqualTo(304);
        }
    }

    @Test
    void aPlantsPageTellsWhatListsNameItInsteadOfAndWhoSaysSo() {
        // Penn State Extension and others read for instead.tsv; the grower is of Pennsylvania
        assertThat(shop.get(shop.plant("Itea virginica")).body())
                .contains("Advised instead of")
                .containsPattern("burning bush \\(Euonymus alatus\\): [^<]*Penn State[^<]* and \\d+ others");
        // named for English ivy by some list, and runs wild itself
        assertThat(shop.get(shop.plant("Ajuga reptans")).body()).doesNotContain("Advised instead of");
    }

    @Test
    void aPageThatWasKeptTellsTheShopsNewWordAtOnce() throws IOException {
        String path = shop.plant("Heptacodium miconioides");
        assertThat(shop.get(path).body()).doesNotContain("Syringa vulgaris");

        Files.writeString(
                Workspace.at(shop.folder()).insteadFile(),
                "original,instead\nSyringa vulgaris,Heptacodium miconioides\n");

        assertThat(shop.get(path).body()).contains("Syringa vulgaris: Wrenfold Growers");
    }

    private String key(String plant) {
        return shop.plant(plant).substring("/p/".length());
    }

    @Test
    void whatCanBeHadIsTheSameOnThePageInTheSpreadsheetAndForPrograms() throws Exception {
        JsonNode feed = json.readTree(shop.get("/available.json").body());
        List<String> lines = shop.get("/available.csv").body().lines().toList();
        assertThat(lines.getFirst()).isEqualTo("\uFEFF" + String.join(",", Feed.COLUMNS));
        assertThat(feed.get("items").size()).isEqualTo(lines.size() - 1).isGreaterThan(600);
        String key = key("Itea virginica 'Henry's Garnet'");
        JsonNode itea = StreamSupport.stream(feed.get("items").spliterator(), false)
                .filter(item -> item.get("plant").asText().equals(key)
                        && item.get("now").asInt() > 0)
                .findFirst()
                .orElseThrow();
        String page = shop.get("/available?genus=Itea").body();
        assertThat(page)
                .contains(itea.get("now").asText() + " now")
                .contains("$" + itea.get("price").asText());
        assertThat(shop.get("/available?genus=Nothofagus").statusCode()).isEqualTo(404);
    }

    @Test
    void thePartsOfTheListTogetherAreTheList() {
        String path = "/available";
        int plants = 0;
        Pattern next = Pattern.compile("href=\"([^\"]+)\" rel=\"next\"");
        while (!path.isEmpty()) {
            String page = shop.get(path).body();
            plants += page.split("scope=\"rowgroup\"", -1).length - 1;
            Matcher later = next.matcher(page);
            path = later.find() ? later.group(1).replace("&amp;", "&") : "";
        }
        String front = shop.get("/").body();
        int counted = Pattern.compile("choice-count\">(\\d+)<")
                .matcher(front)
                .results()
                .mapToInt(count -> Integer.parseInt(count.group(1)))
                .sum();
        assertThat(plants).isEqualTo(counted).isGreaterThan(300);
    }

    @Test
    void aPlantTellsProgramsWhatItIsAndWhatIsOffered() throws Exception {
        String page = shop.get(shop.plant("Itea virginica 'Henry's Garnet'")).body();
        Matcher data = DATA.matcher(page);
        assertThat(data.find()).isTrue();
        JsonNode product = json.readTree(data.group(1));
        // https://schema.org/Product and https://schema.org/Offer, names from memory
        assertThat(product.get("@type").asText()).isEqualTo("Product");
        assertThat(product.get("name").asText()).isEqualTo("Itea virginica 'Henry's Garnet'");
        JsonNode offer = product.get("offers").get(0);
        assertThat(offer.get("availability").asText()).startsWith("https://schema.org/");
        assertThat(offer.get("priceCurrency").asText()).isEqualTo("USD");
        assertThat(page)
                .contains("<link rel=\"canonical\" href=\"" + product.get("url").asText() + "\">")
                .contains("<meta property=\"og:title\"");
    }

    @Test
    void plantsSideBySideShowWhatDiffersBeforeWhatAgrees() {
        String page = shop.get("/compare?p=" + key("Itea virginica") + "&add=Itea+virginica+%27Henry%27s+Garnet%27")
                .body();
        int table = page.indexOf("<table");
        int same = page.indexOf("The same in all");
        assertThat(table).isPositive();
        assertThat(same).isGreaterThan(table);
        assertThat(page).contains("Leave out Itea virginica &#39;Henry&#39;s Garnet&#39;");
        String more = shop.get("/compare?p="
                        + String.join(
                                "&p=",
                                key("Itea virginica"),
                                key("Clethra alnifolia"),
                                key("Fothergilla gardenii"),
                                key("Aronia arbutifolia"),
                                key("Cornus florida")))
                .body();
        assertThat(more).as("four and no more").doesNotContain("Cornus florida").doesNotContain("name=\"add\"");
        assertThat(shop.get("/compare?add=hydranja").body()).contains("Which one is meant?");
        assertThat(shop.get("/compare?p=none").statusCode()).isEqualTo(200);
    }

    @Test
    void searchersAreToldEveryPageOnce() throws Exception {
        assertThat(shop.get("/robots.txt").body()).contains("/sitemap.xml");
        var xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(shop.get("/sitemap.xml").body().getBytes(StandardCharsets.UTF_8)));
        var addresses = xml.getElementsByTagName("loc");
        assertThat(addresses.getLength()).isGreaterThan(600);
        assertThat(shop.get("/sitemap/1").statusCode()).isEqualTo(200);
        for (String no : List.of("2", "0", "-1", "x", "99999999999")) {
            assertThat(shop.get("/sitemap/" + no).statusCode()).as(no).isEqualTo(404);
        }
    }
}
