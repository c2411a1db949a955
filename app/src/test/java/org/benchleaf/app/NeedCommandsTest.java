package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Needs asked from the command line, over the demo nursery.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NeedCommandsTest {
    private Path folder = Path.of("");
    private String shop = "";

    @BeforeAll
    void makeTheShop(@TempDir Path temporary) {
        folder = temporary;
        shop = temporary.resolve("demo").toString();
        assertThat(Run.benchleaf("demo", shop).code()).isZero();
    }

    private Run run(String command, String... more) {
        String[] all = new String[more.length + 3];
        all[0] = command;
        System.arraycopy(more, 0, all, 1, more.length);
        all[more.length + 1] = "--workspace";
        all[more.length + 2] = shop;
        return Run.benchleaf(all);
    }

    @Test
    void offersTheOtherReadingAndTellsWhatWasFreed() {
        Run run = run("need", "shade, zone 3 if possible");
        assertThat(run.out())
                .contains("\"shade\" may also mean: full shade")
                .contains("(freed: may be given up)")
                .contains("you freed it");
    }

    @Test
    void saysByHowMuchToLoosenWhenFewMeetAll() {
        Run run = run("need", "evergreen shrub, full shade, zone 5, under 2 ft, 200 in #3");
        assertThat(run.out()).contains("By how much to loosen");
    }

    @Test
    void tellsWhyAPlantIsNoAnswer() {
        Run run = run("why", "Acer rubrum", "no maple, zone 6");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("It is no answer: it is known to miss what is never given up (not Acer).");
    }

    @Test
    void tellsThePlaceOfAnAnswer() {
        assertThat(run("why", "Acer rubrum", "tree, fall color, zone 6").out()).contains("It is number ");
    }

    @Test
    void countsFacets() {
        Run run = run("facets", "evergreen, zone 6");
        assertThat(run.out()).contains("kind: ").contains("flower color: ").contains("size: ");
        assertThat(run("facets", "evergreen", "--json").out()).contains("\"plants\"");
    }

    @Test
    void answersEveryLineOfAFileAsATableOrAsOneAnswerALine() throws IOException {
        Path needs = Files.writeString(folder.resolve("needs.txt"), "red stems in winter\n\nnative fern for shade\n");
        Run table = run("need", "--batch", needs.toString(), "--csv", "--limit", "3");
        assertThat(table.out().lines()).hasSize(7);
        assertThat(table.out()).startsWith("need,place,key,name,common_name,met,missed,unknown,stock,as_of").contains(",2026-11-25T10:00");
        Run json = run("need", "--batch", needs.toString(), "--json", "--limit", "1");
        assertThat(json.out().lines()).hasSize(2).allMatch(line -> line.startsWith("{\"need\""));
    }

    @Test
    void tellsWhyAndCountsFacetsForMachinesAndForEveryLineOfAFile() throws IOException {
        assertThat(run("why", "Acer rubrum", "no maple, zone 6", "--json").out())
                .contains("\"keptOutBy\" : [ \"not Acer\" ]")
                .doesNotContain("\"place\"");
        Path needs = Files.writeString(folder.resolve("whys.txt"), "tree, zone 6\nshrub for shade\n");
        Run whys = run("why", "Acer rubrum", "--batch", needs.toString(), "--csv");
        assertThat(whys.out().lines()).hasSize(3);
        assertThat(whys.out()).startsWith("need,key,name,place,among,kept_out_by,met,missed,unknown");
        Run facets = run("facets", "--batch", needs.toString(), "--json");
        assertThat(facets.out().lines()).hasSize(2).allMatch(line -> line.startsWith("{\"need\""));
        assertThat(run("facets", "tree", "--csv").out()).startsWith("need,facet,value,plants");
    }

    @Test
    void readsANeedInSpanish() {
        Run run = run("need", "arbustos para sombra, zona 6", "--language", "es", "--json", "--limit", "1");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("\"notUnderstood\" : [ ]").contains("\"kind\" : \"OfForm\"");
        assertThat(run("need", "arbustos para sombra, zona 6", "--language", "es", "--limit", "1").out())
                .as("answered in the language it was asked in")
                .contains("(nunca se renuncia)")
                .contains("resistente en las zonas")
                .contains("media sombra")
                .doesNotContain("hardy", "full sun", "shrub");
    }

    @Test
    void asksForFamiliesAndRightsAsOptions() {
        Run run = run("need", "--family", "Ericaceae", "--free-of", "patent", "--json", "--limit", "3");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("is of Ericaceae").contains("\"kind\" : \"FreeOf\"");
    }

    @Test
    void knowsTheZoneOfAPostalCodeFromTheShopsTable() throws IOException {
        assertThat(run("need", "--zip", "19380").err()).contains("benchleaf zones FILE");
        // made up for the test; tables of real codes are the shop's to bring
        Path table = Files.writeString(
                folder.resolve("zones.csv"), "zipcode,zone,trange\n19380,7a,0 to 5\n1002,5b,-15 to -10\n");
        assertThat(run("zones", table.toString()).out()).contains("2 postal codes taken in");
        assertThat(run("need", "shrub at zip 19380").out()).contains("zone 7a");
        assertThat(run("need", "shrub for 01002").out()).contains("5b");
        Files.delete(Path.of(shop, "postal-zones.csv"));
    }

    @Test
    void refusesAKindOfWishThatIsNone() {
        Run run = run("need", "shade", "--free", "Nonsense");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("\"Nonsense\" is no kind of wish; known are: AtLeastTall");
    }
}
