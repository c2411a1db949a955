package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Spreadsheets from the command line: shown, loaded, taken back, looked through, written out.
class ImportCommandsTest {
    private static final String PLANTS = """
            name,common_names,height,exposure,source
            Acer rubrum,red maple,40-60 ft,full sun; part sun,a handbook
            Itea virginica,Virginia sweetspire,3-5 ft,full sun; part shade,a handbook
            """;
    private static final String STOCK = """
            lot,name,size,count,price
            T1,Acer rubrum,2.5 in cal B&B,12,180.00
            T2,Itea virginica,#3,60,21.50
            """;

    @TempDir
    Path folder;

    private String shop = "";

    @BeforeEach
    void makeAWorkspace() throws IOException {
        shop = folder.resolve("shop").toString();
        assertThat(Run.benchleaf("new", shop, "--shop", "A nursery").code()).isZero();
        assertThat(run("load", file("plants.csv", PLANTS)).code()).isZero();
    }

    private Run run(String command, String... arguments) {
        List<String> all = new ArrayList<>(List.of(command, "--workspace", shop));
        all.addAll(List.of(arguments));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static JsonNode json(Run run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void previewsFieldByFieldInTextPageAndJson() throws IOException {
        String taller = file("taller.csv", PLANTS.replace("3-5 ft", "4-6 ft").replace("full sun; part sun", "shade"));
        Path page = folder.resolve("preview.html");

        Run text = run("preview", taller, "--html", page.toString());
        assertThat(text.code()).isEqualTo(1);
        assertThat(text.out())
                .contains("~ Itea virginica")
                .contains("height: 3–5 ft → 4–6 ft")
                .contains("taller.csv row 2, column exposure");
        assertThat(Files.readString(page)).contains("<html").contains("Itea virginica");

        JsonNode json = json(run("preview", "--json", taller));
        assertThat(json.get("changedPlants").asInt()).isEqualTo(1);
        assertThat(json.get("samePlants").asInt()).isEqualTo(1);
        assertThat(json.at("/changes/0/fields/0/field").asText()).isEqualTo("height");
        assertThat(json.at("/findings/0/column").asText()).isEqualTo("exposure");
        assertThat(run("plant", "Itea virginica").out()).contains("3–5 ft  (a handbook)");
    }

    @Test
    void loadsAllOrNothingAndTakesBack() throws IOException {
        Run refused = run("load", file("broken.csv", PLANTS + "??? no name,,,,\n"));
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.out()).contains("Nothing was loaded");

        JsonNode loaded = json(run("load", "--json", file("stock.csv", STOCK)));
        assertThat(loaded.get("loaded").asBoolean()).isTrue();
        assertThat(loaded.get("lots").asInt()).isEqualTo(2);

        JsonNode undone = json(run("undo", "--json"));
        assertThat(undone.get("file").asText()).isEqualTo("stock.csv");
        assertThat(undone.get("lotsTakenOut").asInt()).isEqualTo(2);
        assertThat(run("undo").out()).contains("plants.csv");
        Run nothing = run("undo");
        assertThat(nothing.code()).isEqualTo(3);
        assertThat(nothing.err()).isNotBlank();
    }

    @Test
    void loadsPlantsAndTheirLotsFromOneListOfAnotherGrower() throws IOException {
        String list = "Botanical Name,Size,Available,Price,Ready,Zone,Height\n"
                + "Nyssa sylvatica,#7,12,$45.00,now,4-9,30-50 ft\n"
                + "Nyssa sylvatica,#15,5,$120.00,wk 14,4-9,30-50 ft\n";
        Run loaded = run("load", file("both.csv", list));
        assertThat(loaded.code()).as("the year of the week is told").isEqualTo(1);
        assertThat(loaded.out()).contains("2 rows read, 3 to load, 0 left out");
        assertThat(loaded.out()).contains("Loaded.");
        assertThat(Run.benchleaf("stock", "availability", "Nyssa sylvatica", "--workspace", shop)
                        .out())
                .contains("#7, $45.00")
                .contains("5 more from the week of 5 April 2027");
        assertThat(run("preview", file("both.csv", list.replace("12", "9"))).out())
                .contains("1 changed lot, 2 the same");
    }

    @Test
    void auditsInTextPageAndJson() throws IOException {
        Path page = folder.resolve("audit.html");
        Run text = run("audit", "--html", page.toString());
        assertThat(text.code()).isZero();
        assertThat(text.out()).contains("Acer rubrum").contains("missing: ").contains("hardiness");
        assertThat(Files.readString(page)).contains("Acer rubrum");
        JsonNode json = json(run("audit", "--json"));
        assertThat(json.get("plants").asInt()).isEqualTo(2);
        assertThat(json.get("score").asDouble()).isBetween(1.0, 60.0);
        assertThat(json.at("/gaps/hardiness").asInt()).isEqualTo(2);
    }

    @Test
    void exportsWhatLoadsAgainWithoutAChange() throws IOException {
        run("load", file("stock.csv", STOCK));
        for (String ending : List.of("csv", "xlsx")) {
            String plants = folder.resolve("out-plants." + ending).toString();
            String stock = folder.resolve("out-stock." + ending).toString();
            assertThat(json(run("export", "plants", plants, "--every-source", "--darwin-core", "--json"))
                            .get("rows")
                            .asInt())
                    .isEqualTo(2);
            assertThat(run("export", "stock", stock).code()).isZero();
            for (String file : List.of(plants, stock)) {
                JsonNode preview = json(run("preview", "--json", file));
                assertThat(preview.get("changes")).as(file).isEmpty();
                assertThat(preview.get("findings")).as(file).isEmpty();
            }
        }
        assertThat(run("export", "plants", folder.resolve("out.pdf").toString()).code())
                .isEqualTo(2);
    }

    @Test
    void proposesAMapSavesItAndUsesIt() throws IOException {
        String list = file("theirs.csv", "Botanical Name;Pot;Qty;Lot\nAcer rubrum;#7;14;N-17\n");
        JsonNode map = json(run("map", "--json", list, "--save", "theirs"));
        assertThat(map.get("rows").asText()).isEqualTo("stock");
        assertThat(map.at("/headings/0/fields/0/field").asText()).isEqualTo("name");
        assertThat(map.get("saved").asText()).endsWith("theirs.json");
        assertThat(json(run("map", "--json")).get("maps").toString()).contains("theirs");
        assertThat(json(run("load", "--json", "--map", "theirs", list))
                        .get("lots")
                        .asInt())
                .isEqualTo(1);
    }

    @Test
    void readsGallonsWhereTheShopCallsItsClassesSo() throws IOException {
        String stock = file("gallons.csv", STOCK.replace("#3", "3 gal"));
        assertThat(run("load", stock).out()).contains("set containers = gallon");
        Path settings = folder.resolve("shop").resolve("settings.properties");
        Files.writeString(settings, Files.readString(settings).replace("containers = number", "containers = gallon"));
        assertThat(run("load", stock).code()).isZero();
        assertThat(run("plant", "Itea virginica").out())
                .contains("3 gal: ")
                .contains("#3 is a class of containers that hold 628 to 742 cubic inches (10.3 to 12.2 L)");
        assertThat(run("plant", "Acer rubrum").out())
                .contains("the caliper is taken 6 in above ground; the ball is at least 28 in across and 19 in deep");
    }

    @Test
    void showsTheFactOfTheSourceThatTheShopBelieves() throws IOException {
        String other = file("usda.csv", "name,height,source\nItea virginica,6 ft,USDA PLANTS 2026\n");
        run("load", other);
        assertThat(run("plant", "Itea virginica").out())
                .contains("6 ft  (USDA PLANTS 2026)")
                .contains("also stated: 3–5 ft");
        Path settings = folder.resolve("shop").resolve("settings.properties");
        Files.writeString(
                settings, Files.readString(settings).replace("sources = shop", "sources = shop, \"a handbook\""));
        assertThat(run("plant", "Itea virginica").out()).contains("also stated: 6 ft  (USDA PLANTS 2026)");
        assertThat(Run.benchleaf(
                                "print",
                                "sheet",
                                "--workspace",
                                shop,
                                "Itea virginica",
                                "--sources",
                                "--out",
                                folder.resolve("s.pdf").toString())
                        .code())
                .isZero();
        assertThat(folder.resolve("s.pdf")).isNotEmptyFile();
        Files.writeString(settings, Files.readString(settings).replace("sources = shop,", "sources = Rutgers, shop,"));
        Run refused = run("plant", "Itea virginica");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("sources").contains("USDA PLANTS");
    }

    @Test
    void tellsWhatASizeMeans() throws IOException {
        assertThat(Run.benchleaf("size", "#1").out())
                .contains("152 to 251 cubic inches")
                .contains("no gallon");
        JsonNode json = json(Run.benchleaf("size", "--json", "4.25", "in", "cal"));
        assertThat(json.get("measuredAtInches").asInt()).isEqualTo(12);
        assertThat(json.get("leastBallInches").asInt()).isEqualTo(48);
        assertThat(Run.benchleaf("size", "24-30 in").out()).contains("lists that begin at 24 in go to 3 ft");
        assertThat(Run.benchleaf("size", "3", "gal").code()).isEqualTo(2);
    }
}
