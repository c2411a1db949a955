package org.benchleaf.search.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.name;
import static org.benchleaf.search.Plants.plant;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameIndexTest {
    @TempDir
    Path folder;

    private final InMemoryCatalogView catalog = new InMemoryCatalogView();
    private PlantIndex index;
    private NameIndex names;

    @BeforeEach
    void aFewPlants() {
        put(1, name("Leucothoe", "fontanesiana"), List.of(), List.of("drooping leucothoe", "doghobble"));
        put(2, name("Coreopsis", "verticillata").withCultivar("Moonbeam"), List.of(), List.of("tickseed"));
        put(3, name("Hydrangea", "paniculata").withCultivar("Limelight"), List.of(), List.of("panicle hydrangea"));
        put(4, name("Hydrangea", "paniculata"), List.of(), List.of("panicle hydrangea"));
        // old name and name in use: USDA PLANTS
        put(5, name("Symphyotrichum", "novae-angliae"), List.of("Aster novae-angliae"), List.of("New England aster"));
        BotanicalName freeman = BotanicalName.ofGenus("Acer").withSpecies(new Epithet(HybridMark.HYBRID, "freemanii"));
        put(6, freeman, List.of(), List.of("Freeman maple"));
        put(7, name("Acer", "rubrum"), List.of(), List.of("red maple"));
        put(8, name("Itea", "virginica"), List.of(), List.of("Virginia sweetspire"));
        put(9, name("Aster", "tataricus"), List.of(), List.of("Tatarian aster"));
        index = PlantIndex.open(folder, catalog);
        names = new NameIndex(index);
    }

    @AfterEach
    void close() {
        index.close();
    }

    private void put(long serial, BotanicalName name, List<String> synonyms, List<String> commonNames) {
        catalog.put(plant(serial, name, facts(), synonyms, commonNames));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
        Acer rubrum                       | 7 | EXACT       | Acer rubrum
        acer RUBRUM                       | 7 | FOLDED      | Acer rubrum
        Acer x freemanii                  | 6 | FOLDED      | Acer ×freemanii
        hydrangea paniculata limelight    | 3 | FOLDED      | Hydrangea paniculata 'Limelight'
        aster novae angliae               | 5 | SYNONYM     | Aster novae-angliae
        Red Maple                         | 7 | COMMON_NAME | red maple
        Limelight                         | 3 | COMMON_NAME | Limelight
        hydrangea limelight               | 3 | COMMON_NAME | Hydrangea Limelight
        Acer xfreemanii                   | 6 | FOLDED      | Acer ×freemanii
        Acer x freemanii E. Murray        | 6 | FOLDED      | Acer ×freemanii
        hydrangea paniculata Limelight PP12874 3gal | 3 | FOLDED | Hydrangea paniculata 'Limelight'
        Hydrangea paniculata (Panicle Group) 'Limelight' | 3 | FOLDED | Hydrangea paniculata 'Limelight'
        Hydrangea paniculata 'Limelight' LIME STAR™ | 3 | FOLDED | Hydrangea paniculata 'Limelight'
        Red maple #5 $45.00               | 7 | COMMON_NAME | red maple
        limel                             | 3 | PREFIX      | Limelight
        hyd pan lime                      | 3 | PREFIX      | Hydrangea paniculata 'Limelight'
        novae-ang                         | 5 | PREFIX      | Symphyotrichum novae-angliae
        lucothoe                          | 1 | ONE_EDIT    | Leucothoe fontanesiana
        hydrnagea limelihgt               | 3 | ONE_EDIT    | Hydrangea paniculata 'Limelight'
        lucothee                          | 1 | TWO_EDITS   | Leucothoe fontanesiana
        kory opsis                        | 2 | TWO_EDITS   | Coreopsis Moonbeam
        luke oh thee                      | 1 | SOUNDS_ALIKE | Leucothoe fontanesiana
        a sir rubrum                      | 7 | SOUNDS_ALIKE | Acer rubrum
        high drain jah lime light         | 3 | SOUNDS_ALIKE | Hydrangea Limelight
        sim fee oh trickum novi anglia    | 5 | SOUNDS_ALIKE | Symphyotrichum novae-angliae
        """)
    void findsByTheSurestWay(String typed, long serial, NameMatch how, String matched) {
        assertThat(names.find(typed, 5)).first().isEqualTo(new NameHit(PlantKey.ofSerial(serial), matched, how));
    }

    @Test
    void putsTheNameThatSoundsNearestFirstAmongThoseAsManyLettersOff() {
        put(10, name("Corylopsis", "spicata"), List.of(), List.of("spike winter hazel"));
        index.catchUp();
        List<NameHit> hits = names.find("kory opsis", 5);
        assertThat(hits).extracting(NameHit::how).startsWith(NameMatch.TWO_EDITS, NameMatch.TWO_EDITS);
        assertThat(hits).extracting(NameHit::plant).startsWith(PlantKey.ofSerial(2), PlantKey.ofSerial(10));
        assertThat(names.find("kory lopsis", 5))
                .first()
                .extracting(NameHit::plant)
                .isEqualTo(PlantKey.ofSerial(10));
    }

    @Test
    void tellsTheNearestOfEachGenusBeforeTheOthersOfTheFirst() {
        put(10, name("Corylopsis", "spicata"), List.of(), List.of("spike winter hazel"));
        put(11, name("Corylopsis", "pauciflora"), List.of(), List.of());
        for (int serial = 12; serial < 20; serial++) {
            put(serial, name("Coreopsis", "grandiflora").withCultivar("Sort " + serial), List.of(), List.of());
        }
        index.catchUp();

        assertThat(names.find("kory opsis", 5))
                .extracting(NameHit::matched)
                .as("Coreopsis sounds just so, Corylopsis lacks a sound; both are two letters off")
                .satisfies(matched -> assertThat(matched.get(0)).startsWith("Coreopsis"))
                .satisfies(matched -> assertThat(matched.get(1)).startsWith("Corylopsis"));
        assertThat(names.find("kory opsis moonbeam", 5))
                .first()
                .extracting(NameHit::plant)
                .isEqualTo(PlantKey.ofSerial(2));
    }

    @Test
    void findsTheSameHoweverTheIndexLiesInParts() {
        put(20, name("Cornus", "florida"), List.of(), List.of("flowering dogwood"));
        index.catchUp();
        put(21, name("Buxus", "sempervirens"), List.of(), List.of("common boxwood"));
        index.catchUp();
        try (PlantIndex whole = PlantIndex.open(folder.resolve("whole"), catalog)) {
            for (String typed : List.of("boxwood", "dogwood", "boxwod", "common boxwood")) {
                assertThat(names.find(typed, 20)).as(typed).isEqualTo(new NameIndex(whole).find(typed, 20));
            }
        }
        assertThat(names.find("boxwood", 20)).extracting(NameHit::plant).containsExactly(PlantKey.ofSerial(21));
    }

    @Test
    void putsThePlantWithMostWordsAsTypedFirstWhereOthersAreShortened() {
        put(10, name("Ilex", "verticillata").withCultivar("Red Sprite"), List.of(), List.of("red winterberry"));
        put(11, name("Ilex", "verticillata").withCultivar("Winter Red"), List.of(), List.of("winterberry"));
        index.catchUp();
        assertThat(names.find("ilex ver winter red", 5))
                .extracting(NameHit::plant)
                .startsWith(PlantKey.ofSerial(11), PlantKey.ofSerial(10));
    }

    @Test
    void putsWhatIsOfThatKindBeforeWhatOnlyBeginsSo() {
        put(10, name("Carex", "pensylvanica"), List.of(), List.of("oak sedge"));
        put(11, name("Hydrangea", "quercifolia"), List.of(), List.of("oakleaf hydrangea"));
        put(12, name("Quercus", "alba"), List.of(), List.of("white oak"));
        index.catchUp();
        assertThat(names.find("oak", 5))
                .extracting(NameHit::matched)
                .containsExactly("white oak", "oak sedge", "oakleaf hydrangea");
        assertThat(names.find("oak s", 5)).extracting(NameHit::matched).startsWith("oak sedge");
    }

    @Test
    void takesNoAbbreviationForAWholeWordOfFewerThanThreeLetters() {
        assertThat(names.find("hy pa li", 5)).extracting(NameHit::how).doesNotContain(NameMatch.PREFIX);
    }

    @Test
    void neverListsALessSureMatchAboveASurerOne() {
        for (String typed : List.of("hydrangea", "aster", "acer", "maple", "h", "panicle hydrangea", "itae", "astr")) {
            List<NameMatch> how =
                    names.find(typed, 20).stream().map(NameHit::how).toList();
            assertThat(how).as(typed).isSorted().isNotEmpty();
        }
    }

    @Test
    void listsAPlantOnce() {
        List<PlantKey> found =
                names.find("hydrangea", 20).stream().map(NameHit::plant).toList();
        assertThat(found).doesNotHaveDuplicates().hasSize(2);
    }

    @Test
    void findsNothingInNothing() {
        assertThat(names.find("", 5)).isEmpty();
        assertThat(names.find(" ' ", 5)).isEmpty();
        assertThat(names.find("zzzzzzz", 5)).isEmpty();
    }

    @Test
    void followsAPlantThatIsRenamed() {
        put(9, name("Symphyotrichum", "tataricum"), List.of("Aster tataricus"), List.of());
        index.catchUp();

        assertThat(names.find("Aster tataricus", 5))
                .containsExactly(new NameHit(PlantKey.ofSerial(9), "Aster tataricus", NameMatch.SYNONYM));
        assertThat(names.complete("tatarian", 5)).isEmpty();
    }
}
