package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.app.web.Server;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Plant lists and pairings from the command line, over the demo nursery.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ListCommandTest {
    private Path folder = Path.of("");
    private String shop = "";

    @BeforeAll
    void makeTheShop(@TempDir Path temporary) {
        folder = temporary;
        shop = temporary.resolve("demo").toString();
        assertThat(Run.benchleaf("demo", shop).code()).isZero();
    }

    private Run run(String... arguments) {
        String[] all = new String[arguments.length + 2];
        System.arraycopy(arguments, 0, all, 0, arguments.length);
        all[arguments.length] = "--workspace";
        all[arguments.length + 1] = shop;
        return Run.benchleaf(all);
    }

    @Test
    void aPaletteIsCollectedCheckedAndExported() throws IOException {
        assertThat(run("list", "new", "Mill Lane", "--zone", "6a", "--ship-to", "PA", "--by", "2027-04-12")
                        .code())
                .isZero();
        assertThat(run("list", "add", "Mill Lane", "Ilex verticillata 'Winter Red'", "--size", "#3", "--quantity", "40")
                        .code())
                .isZero();
        assertThat(run(
                                "list",
                                "add",
                                "mill lane",
                                "Tiarella cordifolia",
                                "--size",
                                "#1",
                                "--area",
                                "200 sq ft",
                                "--spacing",
                                "12 in",
                                "--pattern",
                                "triangular",
                                "--waste",
                                "5")
                        .out())
                .contains("243 × Tiarella cordifolia (200 sq ft at 12 in, triangular, 5 % more for losses)");
        run("list", "add", "Mill Lane", "Cornus sericea 'Cardinal'", "--size", "#5", "--quantity", "9000");

        Run check = run("list", "check", "Mill Lane");

        assertThat(check.code()).isEqualTo(1);
        assertThat(check.out())
                .contains("line 1, pollination: It is female")
                .contains("'Southern Gentleman'")
                .contains("of the 9,000 by the week of 12 April 2027")
                .contains("For the rest: ")
                .contains("Poisonous to")
                .contains("  Jan  ")
                .contains("plants, $");

        run("list", "add", "Mill Lane", "Ilex verticillata 'Southern Gentleman'", "--size", "#3", "--quantity", "2");
        assertThat(run("list", "remove", "Mill Lane", "3").code()).isZero();
        Run mended = run("list", "check", "Mill Lane");
        assertThat(mended.out()).contains("Its partner for fruit is on the list");
        assertThat(mended.code()).isZero();

        Path csv = folder.resolve("mill.csv");
        assertThat(run("list", "export", "Mill Lane", csv.toString()).out()).contains("3 rows written");
        assertThat(Files.readString(csv)).contains("line,key,name").contains("\"200 sq ft at 12 in, triangular");
        Path workbook = folder.resolve("mill.xlsx");
        assertThat(run("list", "export", "Mill Lane", workbook.toString()).code())
                .isZero();
        assertThat(Files.size(workbook)).isPositive();
        assertThat(run("list", "show", "--json").out()).contains("Mill Lane");
        assertThat(run("list", "show", "Mill Lane", "--json").out())
                .contains("\"quantity\" : 243")
                .contains("\"december\" : [");
        assertThat(run("list", "remove", "Mill Lane").code()).isZero();
        assertThat(run("list", "show", "Mill Lane").code()).isEqualTo(2);
    }

    @Test
    void twoLinesOfOneItemShareItsStock() {
        run("list", "new", "Twice");
        String plant = "Ilex verticillata 'Winter Red'";
        run("list", "add", "Twice", plant, "--size", "#3", "--quantity", "5000");
        run("list", "add", "Twice", plant, "--size", "#3", "--quantity", "10");

        assertThat(run("list", "show", "Twice").out()).contains("#3: 0 to be had, 10 short");
    }

    @Test
    void aPlantThatMayNotBeSoldThereOrIsNotHardyStandsAgainstTheList() {
        run("list", "new", "Cold", "--zone", "3a");
        run("list", "add", "Cold", "Itea virginica", "--quantity", "5");

        assertThat(run("list", "check", "Cold").out()).contains("line 1, site: hardy in zones 5–9");
        assertThat(run("list", "site", "Cold", "--zone", "6a").out()).contains("hardy in zone 6a");
        assertThat(run("list", "check", "Cold").code()).isZero();
    }

    @Test
    void quantitiesAreWorkedOutWithoutAList() {
        // 300 sq ft at 18 in: 133.3, published as 133 by erthturf.com; rounded up here
        assertThat(Run.benchleaf("list", "quantity", "--area", "300 sq ft", "--spacing", "18 in")
                        .out())
                .startsWith("134 plants");
        Run none = Run.benchleaf("list", "quantity", "--area", "300 sq ft");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("--spacing");
        assertThat(Run.benchleaf("list", "quantity", "--area", "a lot", "--spacing", "1 ft")
                        .err())
                .contains("area \"a lot\" not understood");
    }

    @Test
    void partnersAndCompanionsAreNamed() {
        Run run = run("pairings", "Ilex verticillata 'Winter Red'");

        assertThat(run.out())
                .contains("it fruits only with a male")
                .contains("Ilex verticillata 'Southern Gentleman'")
                .contains("named as a partner; blooms at the same time")
                .contains("Companions for the same site:");
        assertThat(run("pairings", "Itea virginica", "--zone", "6a", "--json", "--limit", "2")
                        .out())
                .contains("\"pollination\" : \"not-known\"")
                .contains("\"companions\" : [");
    }

    @Test
    void aLivePageNamesPartnersAndWhileThePlantIsGoneWhatToBuyInstead() throws Exception {
        try (Benchleaf benchleaf = Benchleaf.open(Path.of(shop), Run.NOVEMBER);
                Server server = Server.start(benchleaf, "localhost", 0)) {
            assertThat(page(server, key(benchleaf, "Ilex verticillata 'Winter Red'")))
                    .contains("Partners for fruit")
                    .contains("Southern Gentleman");
            String gone = soldOut(benchleaf);
            assertThat(page(server, gone)).contains("Instead, while it is gone").contains("Here in #");
            assertThat(page(server, key(benchleaf, "Itea virginica"))).doesNotContain("Instead, while it is gone");
        }
    }

    private static String key(Benchleaf benchleaf, String name) {
        return benchleaf.plantFinder().find(name).key().text();
    }

    /// A plant of the demo of which there is none now.
    private static String soldOut(Benchleaf benchleaf) {
        List<String> gone = new java.util.ArrayList<>();
        benchleaf.catalog().forEachStock(stock -> {
            if (stock.lots().stream()
                    .noneMatch(lot -> lot.count() > 0 && lot.ready().isEmpty())) {
                gone.add(stock.plant().text());
            }
        });
        return gone.getFirst();
    }

    private static String page(Server server, String key) throws Exception {
        URI address = URI.create("http://localhost:" + server.port() + "/p/" + key);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    @Test
    void everyCommandAndOptionIsDocumented() throws IOException {
        String text = Files.readString(Path.of("../docs/plant-lists.md"))
                + Files.readString(Path.of("../docs/substitutes.md"));
        Set<String> missing = new TreeSet<>();
        for (String command : List.of("new", "add", "site", "remove", "show", "check", "quantity", "export")) {
            assertThat(text).contains("`list " + command);
            options(Run.benchleaf("list", command, "--help").out(), text, missing);
        }
        options(Run.benchleaf("pairings", "--help").out(), text, missing);
        missing.removeAll(List.of("--help", "--version", "--workspace"));
        assertThat(missing).isEmpty();
    }

    private static void options(String help, String text, Set<String> missing) {
        Matcher option = Pattern.compile("(--[a-z-]+)").matcher(help);
        while (option.find()) {
            if (!text.contains("`" + option.group(1))) {
                missing.add(option.group(1));
            }
        }
    }
}
