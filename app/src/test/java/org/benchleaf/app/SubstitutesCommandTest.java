package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Aspect;
import org.benchleaf.search.substitute.Kin;
import org.benchleaf.shared.measure.LengthStyle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Substitutes asked from the command line, over the demo nursery.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SubstitutesCommandTest {
    private Path folder = Path.of("");
    private String shop = "";

    @BeforeAll
    void makeTheShop(@TempDir Path temporary) {
        folder = temporary;
        shop = temporary.resolve("demo").toString();
        assertThat(Run.benchleaf("demo", shop).code()).isZero();
    }

    private Run run(String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "substitutes";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        all[arguments.length + 1] = "--workspace";
        all[arguments.length + 2] = shop;
        return Run.benchleaf(all);
    }

    @Test
    void replacesAPlantThatTheShopDoesNotGrowAndMayNotSell() {
        Run run = run(
                "Euonymus alatus",
                "--size",
                "#3",
                "--quantity",
                "40",
                "--for",
                "hedge",
                "--zone",
                "6a",
                "--ship-to",
                "PA",
                "--by",
                "2027-04-12");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Instead of Euonymus alatus, burning bush")
                .contains("It is not in the catalog; its facts are from memory.")
                .contains("Its work here: hedge; ")
                .contains("40 in #3 by the week of 12 April 2027; hardy in zone 6a; may be sold and shipped to"
                        + " Pennsylvania on 12 April 2027")
                .contains("Other species for the same work")
                .contains("Different: It ")
                .contains("The same: ")
                .contains("Better than the original: ")
                .contains("Local law decides");
        assertThat(run.out().indexOf("Different: ")).isLessThan(run.out().indexOf("The same: "));
    }

    @Test
    void takesAWordForMostOfAGenusAndSaysWhatElseItMayMean() {
        Run run = run("hemlock");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Instead of Tsuga canadensis")
                .contains("\"hemlock\" is taken as Tsuga canadensis. It may also mean: ")
                .contains("Taxus canadensis");
    }

    @ParameterizedTest
    @CsvSource({
        // a rose mallow, a maple-leaved alumroot and an oak sedge begin so
        "rose, Rosa ",
        "maple, Acer ",
        "oak, Quercus ",
        "cherry, Prunus ",
        "plum, Prunus ",
        // of the birches the one that is grown most
        "birch, Betula nigra",
        // one of two that are not grown here
        "ash, Fraxinus "
    })
    void aKindOfPlantIsWhatMostPlantsCalledSoAreAndNotWhatIsNamedAfterIt(String kind, String original) {
        assertThat(run(kind).out()).contains("Instead of " + original).contains("\"" + kind + "\" is taken as ");
    }

    @Test
    void whereNoGenusHasMostOfAKindTheNearestAreNamed() {
        assertThat(run("grass").err()).contains("\"grass\" fits several plants");
    }

    @Test
    void knowsAPlantByItsCommonNameWithTheKindOfPlantBehindIt() {
        assertThat(run("mimosa tree").out()).contains("Instead of Albizia julibrissin, mimosa");
        assertThat(run("ash tree").out()).contains("Instead of Fraxinus ").contains("It may also mean: Fraxinus ");
        assertThat(run("english holly").out()).contains("Instead of Ilex aquifolium, English holly");
    }

    @ParameterizedTest
    @CsvSource({
        "burning bsh, 'Euonymus alatus, burning bush'",
        "norway mapel, 'Acer platanoides, Norway maple'",
        "buterfly bush, Buddleja davidii",
        "bradfrod pear, Pyrus calleryana",
        "burr bris thun berg eye, Berberis thunbergii",
        "lith rum, Lythrum salicaria",
        "privit, Ligustrum",
        "knotwede, Fallopia japonica",
        "limelite, Hydrangea paniculata 'Limelight'",
        "red mapel, 'Acer rubrum, red maple'",
        "fothergila, Fothergilla ",
        "high drain jah, Hydrangea "
    })
    void aNameMisspeltOrMisheardIsTakenForTheNearestGrownHereOrNotAndSaysSo(String typed, String original) {
        assertThat(run(typed).out())
                .contains("Instead of " + original)
                .contains("\"" + typed + "\" is taken as " + original.split(",")[0]);
    }

    @Test
    void takesNoPlantForAnotherThatIsFarFromItsName() {
        for (String name : List.of("teasel", "sago palm")) {
            Run run = run(name);

            assertThat(run.out()).as(name).doesNotContain("Instead of");
            assertThat(run.err()).as(name).contains("\"" + name + "\"");
        }
    }

    @Test
    void canBeReadAloud() {
        String out = run("burning bush").out();
        String sentences =
                out.lines().filter(line -> line.startsWith("    Different: ")).collect(Collectors.joining("\n"));

        assertThat(sentences).contains(" feet").doesNotContain("–").doesNotContain(" ft");
    }

    @Test
    void keepsSistersOfASoldOutCultivarApart() {
        Run run = run("Ilex verticillata 'Winter Red'", "--all");

        assertThat(run.out())
                .contains("The same species")
                .contains("Smaller sisters")
                .contains("'Red Sprite'");
    }

    @Test
    void takesAGenusAsAWhole() {
        assertThat(run("Buxus", "--limit", "10").out()).doesNotContain(". Buxus");
    }

    @Test
    void takesAnEverydayWordForThePlainestPlantThatIsCalledSo() {
        assertThat(run("boxwood").out()).startsWith("Instead of Buxus");
        assertThat(run("Hedera").out()).startsWith("Instead of Hedera helix");
    }

    @Test
    void answersInJson() {
        Run run = run("Berberis thunbergii", "--json", "--limit", "2");

        assertThat(run.out())
                .contains("\"inCatalog\" : false")
                .contains("\"unwelcome\" : true")
                .contains("\"substitutes\" : [")
                .contains("\"differs\" : [")
                .contains("\"group\" : \"other-species\"")
                .contains("\"advised\" : [ \"Physocarpus opulifolius\", ")
                .contains("\"offer\" : {");
    }

    @Test
    void answersALineOfJsonForEachNameOfAFileKnownOrNot() throws IOException {
        Path names = Files.writeString(folder.resolve("names.txt"), "Hedera helix\n\nNo such plant at all\n");

        Run run = run("--batch", names.toString(), "--limit", "1");

        assertThat(run.code()).isZero();
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("{\"read\":\"Hedera helix\",\"original\":");
        assertThat(lines.get(1)).startsWith("{\"read\":\"No such plant at all\",\"problem\":");
    }

    @Test
    void knowsWhatTheShopWroteDownAsItsOwnReference() throws IOException {
        Files.writeString(Path.of(shop, "reference.csv"), """
                name,common_names,life_form,foliage,height,exposure,uses,source
                Elaeagnus pungens,thorny olive,shrub,evergreen,8-12 ft,full sun; part shade,hedge,from memory
                """);
        try {
            assertThat(run("thorny olive").out()).contains("Instead of Elaeagnus pungens, thorny olive");
        } finally {
            Files.delete(Path.of(shop, "reference.csv"));
        }
    }

    @Test
    void tellsWhatListsNameInsteadOfAPlantThatNobodyKnowsMoreOf() {
        // of instead.tsv: Chicago Botanic Garden names soft rush instead of flowering rush
        Run rush = run("butomus umbellatus");
        assertThat(rush.code()).isZero();
        assertThat(rush.out())
                .contains("Instead of Butomus umbellatus")
                .contains(
                        "no more is known of it here than what published lists name in its place: Chamerion latifolium, Juncus effusus, ")
                .contains("Named in its place by Chicago Botanic Garden.");

        Run elodea = run("Egeria densa");
        assertThat(elodea.out())
                .contains("name in its place: Elodea canadensis.")
                .contains("Nothing in stock does its work under these conditions.");
        assertThat(run("Egeria densissima").code()).as("no list replaces it").isNotZero();
    }

    @Test
    void replacesACultivarThatIsNotKnownHereByWhatIsKnownOfItsSpecies() {
        Run cully = run("Betula nigra 'Cully'");
        assertThat(cully.code()).isZero();
        assertThat(cully.out())
                .contains("Instead of Betula nigra 'Cully'")
                .contains("It is not in the catalog; what follows goes by the facts of Betula nigra.")
                .contains("The same species", " 1. Betula nigra, river birch");

        assertThat(run("betula nigra heritage").out())
                .as("without its marks")
                .contains("Instead of Betula nigra 'Heritage'");
        assertThat(run("Quercus alba (white oak)").out()).contains("Instead of Quercus alba, white oak");
        assertThat(run("Berberis thunbergii 'Rose Glow'").out())
                .as("known, and not grown")
                .contains("what follows goes by the facts of Berberis thunbergii.", "It is regulated somewhere")
                .doesNotContain("  1. Berberis");
    }

    @Test
    void ofACultivarWithoutASpeciesOthersOfItsGenusAreProposedAndNothingIsGuessed() {
        Run hosta = run("Hosta 'Guacamole'", "--limit", "10");

        assertThat(hosta.out())
                .contains("nothing more is known of it here: what follows are others of Hosta.")
                .contains("Hosta 'Francee'");
        assertThat(hosta.out().lines().filter(line -> line.matches(" ?\\d+\\. .*")))
                .isNotEmpty()
                .allMatch(line -> line.contains("Hosta"));
        assertThat(run("Nosuch 'Guacamole'").code()).as("no such genus").isNotZero();
    }

    @Test
    void refusesAPurposeThatIsNone() {
        Run run = run("burning bush", "--for", "nonsense");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("\"nonsense\" is neither a use nor a season; write one of: hedge, screen");
    }

    @Test
    void everyDifferenceHasItsWords() {
        Wording words = Wording.open(ContentPack.builtIn(), java.util.Locale.ENGLISH, LengthStyle.IMPERIAL);
        for (Aspect aspect : Aspect.values()) {
            assertThat(words.keys()).contains("substitute.aspect." + aspect, "substitute." + aspect + ".SAME");
        }
        for (Kin kin : Kin.values()) {
            assertThat(words.keys()).contains("substitute.group." + kin);
        }
        Set<Aspect> ordered = Set.of(Aspect.HEIGHT, Aspect.SPREAD, Aspect.DROUGHT, Aspect.HARDINESS, Aspect.DEER);
        for (Aspect aspect : ordered) {
            assertThat(words.keys()).contains("substitute." + aspect + ".MORE", "substitute." + aspect + ".LESS");
        }
    }

    @Test
    void everyOptionIsDocumented() throws IOException {
        String text = Files.readString(Path.of("../docs/substitutes.md"))
                + Files.readString(Path.of("../docs/need-queries.md"));
        Matcher option = Pattern.compile("(--[a-z-]+)").matcher(run("--help").out());
        Set<String> missing = new TreeSet<>();
        while (option.find()) {
            if (!text.contains("`" + option.group(1))) {
                missing.add(option.group(1));
            }
        }
        missing.removeAll(List.of("--help", "--version", "--workspace"));
        assertThat(missing).isEmpty();
    }

    @Test
    void aShopsOwnWordIsToldFirstAndBringsAPlantForward(@TempDir Path temporary) throws IOException {
        String own = temporary.resolve("demo").toString();
        assertThat(Run.benchleaf("demo", own).code()).isZero();
        Path table = Files.writeString(
                temporary.resolve("advice.csv"),
                "original,instead,publisher,title,year,address\n"
                        + "Euonymus alatus,Fothergilla gardenii,,,,\n"
                        + "Euonymus alatus 'Compactus',Itea virginica 'Henry''s Garnet',A county,Its list,2026,\n"
                                .replace("''", "'"));

        Run taken = Run.benchleaf("advice", table.toString(), "--workspace", own);
        Run run = Run.benchleaf("substitutes", "Euonymus alatus", "--workspace", own);

        assertThat(taken.out()).contains("2 rows taken in, instead of 1 plant");
        assertThat(run.out().lines().filter(line -> line.contains(" 1. ")))
                .first()
                .asString()
                .contains("Fothergilla gardenii");
        assertThat(run.out()).contains("Named in its place by Wrenfold Growers");
    }

    @Test
    void aTableWithANameThatCannotBeReadIsNotTakenAndSaysWhere(@TempDir Path temporary) throws IOException {
        Path own = temporary.resolve("shop");
        assertThat(Run.benchleaf("new", own.toString()).code()).isZero();
        Path table = Files.writeString(
                temporary.resolve("advice.csv"), "original,instead\nBuxus,Ilex glabra\nBuxus,some other box\n");

        Run run = Run.benchleaf("advice", table.toString(), "--workspace", own.toString());

        assertThat(run.code()).isNotZero();
        assertThat(run.err()).contains("advice.csv row 3, column instead", "\"some other box\"", "Ilex glabra");
        assertThat(own.resolve("instead.csv")).doesNotExist();
    }

    @Test
    void aTableWithoutItsHeadingsIsNotTaken(@TempDir Path temporary) throws IOException {
        Path own = temporary.resolve("shop");
        assertThat(Run.benchleaf("new", own.toString()).code()).isZero();
        Path table = Files.writeString(temporary.resolve("advice.csv"), "plant,instead\nBuxus,Ilex glabra\n");

        assertThat(Run.benchleaf("advice", table.toString(), "--workspace", own.toString())
                        .err())
                .contains("advice.csv has no column original");
    }
}
