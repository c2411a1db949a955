package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.intake.Planned.findings;
import static org.benchleaf.catalog.intake.Planned.plants;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.intake.Finding.Outcome;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantPlanTest {
    private static final String KEY = PlantKey.ofSerial(1000).text();

    @Test
    void takesARowOverWithNamesFactsAndTheirSources() {
        ImportPlan plan = plants(
                new MemoryBook(),
                "name,common_names,common_names_es,synonyms,hardiness,height,deer,source,fact_sources",
                "Acer rubrum,red maple; swamp maple,arce rojo,Rufacer rubrum,3-9,40-60 ft,occasionally,from memory,"
                        + "deer=Rutgers NJAES E271");
        assertThat(plan.findings()).isEmpty();
        PlantDraft draft = plan.plants().get(0);
        assertThat(draft.name()).isEqualTo(BotanicalName.ofSpecies("Acer", "rubrum"));
        assertThat(draft.key()).isEmpty();
        assertThat(draft.commonNames())
                .containsExactly(
                        new CommonName("red maple", Locale.ENGLISH),
                        new CommonName("swamp maple", Locale.ENGLISH),
                        new CommonName("arce rojo", Locale.of("es")));
        assertThat(draft.synonyms()).containsExactly(new Synonym("Rufacer rubrum", Source.FROM_MEMORY));
        Facts facts = Facts.of(draft.facts());
        assertThat(facts.fact(Attributes.HARDINESS))
                .contains(new Fact<>(Attributes.HARDINESS, ZoneRange.read("3-9").orThrow(), Source.FROM_MEMORY, false));
        assertThat(facts.value(Attributes.HEIGHT)).contains(LengthRange.ofFeet(40, 60));
        assertThat(facts.fact(Attributes.DEER).map(Fact::source)).contains(new Source("Rutgers NJAES E271"));
    }

    @Test
    void plansTheSameTwice() {
        String[] lines = {"name,height,zone", "Acer rubrum,60-40 ft,4", "acer rubrum,14c,"};
        assertThat(plants(new MemoryBook(), lines)).isEqualTo(plants(new MemoryBook(), lines));
    }

    @Test
    void keepsEmptyCellsAsNotKnown() {
        assertThat(plants(new MemoryBook(), "name,height,bloom", "Acer rubrum,,")
                        .plants()
                        .get(0)
                        .facts())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        hardiness     | 14c            | zone.unknown
        hardiness     | 8-4            | zone.reversed
        height        | 60-40 ft       | length.reversed
        height        | 60             | length.unit
        height        | 0 ft           | length.range
        height        | tall           | length.unknown
        bloom         | Blossom        | months.unknown
        exposure      | dappled        | term.unknown
        flower_color  | blurple        | color.unknown
        soil_ph       | 7.5-5          | ph.reversed
        native_states | XX             | region.unknown
        cautions      | poisonous      | caution.form
        hardiness     | 9-May          | cell.date
        hardiness     | 2026-05-09     | cell.date
        height        | 6/8/2026       | cell.date
        height        | #REF!          | cell.error
        """)
    void leavesOutACellItDoesNotUnderstandAndSaysWhere(String heading, String cell, String problem) {
        ImportPlan plan = plants(new MemoryBook(), "name," + heading, "Acer rubrum," + cell);
        assertThat(findings(plan)).containsExactly("2 " + heading + " " + problem + " CELL_LEFT_OUT");
        assertThat(plan.findings().get(0).problem().details()).containsEntry("read", cell);
        assertThat(plan.plants()).hasSize(1);
        assertThat(plan.plants().get(0).facts()).isEmpty();
    }

    @Test
    void saysWhatADamagedCellWas() {
        assertThat(plants(new MemoryBook(), "name,hardiness", "Acer rubrum,9-May")
                        .findings()
                        .get(0)
                        .problem())
                .isEqualTo(Problem.of("cell.date", "9-May").with("meant", "5-9"));
    }

    @Test
    void listsTheWordsThatAreAccepted() {
        Problem problem = plants(new MemoryBook(), "name,growth_rate", "Acer rubrum,quick")
                .findings()
                .get(0)
                .problem();
        assertThat(problem).isEqualTo(Problem.of("term.unknown", "quick").with("accepted", "slow, medium, fast"));
    }

    @Test
    void keepsTheStatesItKnows() {
        ImportPlan plan = plants(new MemoryBook(), "name,native_states", "Acer rubrum,PA QX NY");
        assertThat(findings(plan)).containsExactly("2 native_states region.unknown CELL_LEFT_OUT");
        assertThat(plan.plants().get(0).facts().get(0).text()).isEqualTo("US-NY US-PA");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        12345                                   | name.unknown
        Magnolia denudata × Magnolia liliiflora | name.partly
        Amelanchier spp.                        | name.partly
        Cornus florida rubra                    | name.partly
        H. canariensis                          | name.partly
        """)
    void leavesOutARowWhoseNameIsNotRead(String name, String problem) {
        ImportPlan plan = plants(new MemoryBook(), "name,height", name + ",6 ft");
        assertThat(findings(plan)).containsExactly("2 name " + problem + " ROW_LEFT_OUT");
        assertThat(plan.plants()).isEmpty();
        assertThat(plan.rowsLeftOut()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
        Acer rubrum October Glory     | name.missing-quotes
        ACER RUBRUM 'OCTOBER GLORY'   | name.capitals
        Acer rubrum 'October Glory' PP2116 | name.mark
        """)
    void tellsWhatItTookOtherwiseThanWritten(String name, String problem) {
        ImportPlan plan = plants(new MemoryBook(), "name", name);
        assertThat(findings(plan)).containsExactly("2 name " + problem + " KEPT");
        assertThat(plan.findings().get(0).problem().details()).containsEntry("taken", "Acer rubrum 'October Glory'");
    }

    @Test
    void refusesAKeyThatIsNone() {
        ImportPlan plan = plants(new MemoryBook(), "key,name", "ABC1234,Acer rubrum");
        assertThat(findings(plan)).containsExactly("2 key key.unknown ROW_LEFT_OUT");
    }

    @Test
    void refusesTheSecondRowOfAKeyOrName() {
        ImportPlan plan = plants(
                new MemoryBook(),
                "key,name",
                KEY + ",Acer rubrum",
                KEY + ",Acer saccharum",
                ",Tilia cordata",
                ",Tilia cordata Mill.");
        assertThat(findings(plan))
                .containsExactly("3 key row.same-key ROW_LEFT_OUT", "5 name row.same-name ROW_LEFT_OUT");
        assertThat(plan.findings().get(1).problem())
                .isEqualTo(Problem.of("row.same-name", "Tilia cordata").with("row", "4"));
    }

    @Test
    void findsAPlantByASynonymAndSaysSo() {
        MemoryBook book = new MemoryBook()
                .apply(plants(new MemoryBook(), "name,synonyms", "Symphyotrichum novae-angliae,Aster novae-angliae"));
        ImportPlan plan = plants(book, "name,height", "Aster novae-angliae,4 ft");
        assertThat(findings(plan)).containsExactly("2 name name.synonym KEPT");
        PlantDraft draft = plan.plants().get(0);
        assertThat(draft.name()).hasToString("Symphyotrichum novae-angliae");
        assertThat(draft.key()).isEqualTo(book.byName(draft.name()));
    }

    @Test
    void tellsARenamingByKey() {
        MemoryBook book = new MemoryBook().apply(plants(new MemoryBook(), "key,name", KEY + ",Aster novae-angliae"));
        ImportPlan plan = plants(book, "key,name", KEY + ",Symphyotrichum novae-angliae");
        assertThat(plan.findings())
                .containsExactly(new Finding(
                        new Place("list.csv", 2, Optional.of("name")),
                        Problem.of("name.renamed", "Symphyotrichum novae-angliae")
                                .with("before", "Aster novae-angliae"),
                        Outcome.KEPT));
    }

    @Test
    void refusesANameThatIsAnotherPlants() {
        MemoryBook book =
                new MemoryBook().apply(plants(new MemoryBook(), "key,name", KEY + ",Acer rubrum", ",Tilia cordata"));
        assertThat(findings(plants(book, "key,name", KEY + ",Tilia cordata")))
                .containsExactly("2 name name.taken ROW_LEFT_OUT");
    }

    @Test
    void namesAnUnknownHeadingAndTheNearestOne() {
        ImportPlan plan = plants(new MemoryBook(), "name,heigth,shelf", "Acer rubrum,40 ft,B");
        assertThat(plan.findings())
                .containsExactly(
                        new Finding(
                                new Place("list.csv", 1, Optional.of("heigth")),
                                Problem.of("heading.unknown", "heigth").with("nearest", "height"),
                                Outcome.CELL_LEFT_OUT),
                        new Finding(
                                new Place("list.csv", 1, Optional.of("shelf")),
                                Problem.of("heading.unused", "shelf").with("map", "own-plants"),
                                Outcome.CELL_LEFT_OUT));
    }

    @Test
    void tellsOfAHeadingInTheRowInWhichItStands() {
        ImportPlan plan =
                plants(new MemoryBook(), "Our list of 2027,,", ",,", "name,height,shelf", "Acer rubrum,40 ft,B");
        assertThat(findings(plan)).contains("3 shelf heading.unused CELL_LEFT_OUT");
    }

    @Test
    void plansNothingWithoutARequiredHeading() {
        ImportPlan plan = plants(new MemoryBook(), "plant,height", "Acer rubrum,40 ft");
        assertThat(findings(plan)).contains("1 name heading.missing ROW_LEFT_OUT");
        assertThat(plan.plants()).isEmpty();
        assertThat(plan.rows()).isEqualTo(1);
    }

    @Test
    void tellsAHeadingThatStandsTwiceAndTextWithoutOne() {
        ImportPlan plan = plants(new MemoryBook(), "name,height,Height,", "Acer rubrum,40 ft,50 ft,look here");
        assertThat(findings(plan))
                .containsExactly("1 Height heading.twice CELL_LEFT_OUT", "2  heading.empty CELL_LEFT_OUT");
    }

    @Test
    void tellsFactsThatLookOddAndKeepsTheShopsWord() {
        ImportPlan plan = plants(
                new MemoryBook(),
                "name,life_form,foliage,height,height_10yr,fall_color",
                "Thuja occidentalis,conifer,evergreen,10 ft,12 ft,bronze",
                "Picea abies,conifer,deciduous,60 ft,,",
                "Larix laricina,conifer,deciduous,60 ft,,yellow",
                "Campsis radicans,vine,deciduous,2 ft,,");
        assertThat(findings(plan))
                .containsExactly(
                        "2 height_10yr size.ten-years KEPT",
                        "2 fall_color fall-color.evergreen KEPT",
                        "3 foliage foliage.conifer KEPT",
                        "5 height height.vine KEPT");
        assertThat(plan.plants().get(1).facts()).hasSize(3);
    }

    @Test
    void tellsAConflictWithAnotherSourceAndKeepsBoth() {
        MemoryBook book = new MemoryBook()
                .apply(plants(
                        new MemoryBook(), "name,foliage,height,source", "Phlox subulata,evergreen,4-6 in,from memory"));
        ImportPlan plan = plants(book, "name,foliage,height,source", "Phlox subulata,herbaceous,2 ft,another list");
        assertThat(plan.findings().get(0).problem())
                .isEqualTo(Problem.of("fact.conflict", "herbaceous")
                        .with("attribute", "foliage")
                        .with("other", "evergreen")
                        .with("source", "from memory"));
        assertThat(findings(plan)).isEqualTo(List.of("2 foliage fact.conflict KEPT", "2 height fact.conflict KEPT"));
        assertThat(plan.plants().get(0).facts()).hasSize(2);
    }

    @Test
    void tellsASourceForAFactNobodyKnows() {
        assertThat(findings(plants(
                        new MemoryBook(), "name,height,source,fact_sources", "Acer rubrum,40 ft,a list,heigth=b; c")))
                .containsExactly(
                        "2 fact_sources fact-source.unknown CELL_LEFT_OUT",
                        "2 fact_sources fact-source.unknown CELL_LEFT_OUT");
    }
}
