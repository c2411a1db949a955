package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.intake.Planned.findings;
import static org.benchleaf.catalog.intake.Planned.plants;
import static org.benchleaf.catalog.intake.Planned.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ContainerNaming;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockPlanTest {
    private static final String HEADINGS = "lot,name,size,form,place,count,ready_week,price,condition,seen_on,gtin";

    private static MemoryBook book() {
        return new MemoryBook()
                .apply(plants(new MemoryBook(), "name,synonyms", "Acer rubrum,Rufacer rubrum", "Tilia cordata,"));
    }

    @Test
    void takesALotOver() {
        MemoryBook book = book();
        ImportPlan plan = stock(
                book,
                HEADINGS,
                "T0001,Acer rubrum,2.5 in cal B&B,multi-stem,B4-12,60,2027-W14,\"1,210.50\",in bud; full,2026-11-18,");
        assertThat(plan.findings()).isEmpty();
        LotDraft lot = plan.lots().get(0);
        assertThat(lot)
                .isEqualTo(new LotDraft(
                        new Place("list.csv", 2, Optional.empty()),
                        "T0001",
                        book.byName(lot.name()),
                        lot.name(),
                        StockSize.read("2.5 in cal B&B").orThrow(),
                        ItemForm.MULTI_STEM,
                        "B4-12",
                        60,
                        Optional.of(new YearWeek(2027, 14)),
                        Optional.of(Money.usDollars("1210.50")),
                        Set.of(Condition.IN_BUD, Condition.FULL),
                        Optional.of(LocalDate.of(2026, 11, 18)),
                        Optional.empty()));
    }

    @Test
    void readsDatesThatAreWrittenMonthFirstAndSaysSo() {
        ImportPlan plan = stock(
                book(),
                HEADINGS,
                "T1,Acer rubrum,#3,,B,5,4/15/2027,,in bud,11/3/26,",
                "T2,Acer rubrum,#3,,B,5,Now,,,,",
                "T3,Acer rubrum,#3,,B,5,15/4/2027,,,,");
        assertThat(plan.lots()).hasSize(2);
        assertThat(plan.lots().get(0).ready()).contains(new YearWeek(2027, 15));
        assertThat(plan.lots().get(0).seenOn()).contains(LocalDate.of(2026, 11, 3));
        assertThat(plan.lots().get(1).ready()).as("can be taken already").isEmpty();
        assertThat(plan.findings())
                .extracting(finding -> finding.place().row() + " "
                        + finding.problem().key() + " "
                        + finding.problem().details().getOrDefault("meant", ""))
                .containsExactly("2 date.american 2027-04-15", "2 date.american 2026-11-03", "4 week.unknown ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        wk 14         | 2027-W14 | week.year
        Week 50       | 2026-W50 | week.year
        w48           | 2026-W48 | week.year
        wk 47         | 2027-W47 | week.year
        Week 14, 2028 | 2028-W14 | ''
        2028 wk 9     | 2028-W09 | ''
        """)
    void readsAWeekAsGrowersWriteItAndSaysWhichYearItTook(String cell, String week, String problem) {
        ShopHabits habits = new ShopHabits(ContainerNaming.NUMBER, LocalDate.of(2026, 11, 25));
        ImportPlan plan = Planned.plan(
                ColumnMaps.ownStock(), book(), habits, HEADINGS, "T1,Acer rubrum,#3,,B,5,\"" + cell + "\",,,,");
        assertThat(plan.lots())
                .singleElement()
                .satisfies(
                        lot -> assertThat(lot.ready()).map(YearWeek::toString).contains(week));
        assertThat(plan.findings())
                .extracting(finding -> finding.problem().key())
                .containsExactlyElementsOf(problem.isEmpty() ? List.of() : List.of(problem));
    }

    @Test
    void refusesAWeekThatNoYearHas() {
        ShopHabits habits = new ShopHabits(ContainerNaming.NUMBER, LocalDate.of(2027, 3, 1));
        ImportPlan plan =
                Planned.plan(ColumnMaps.ownStock(), book(), habits, HEADINGS, "T1,Acer rubrum,#3,,B,5,wk 53,,,,");
        assertThat(findings(plan)).containsExactly("2 ready_week week.unknown ROW_LEFT_OUT");
    }

    @Test
    void takesWhatIsSoldWhereForTheLotInAListWithoutLotNumbers() {
        MemoryBook book = book();
        ImportPlan plan = stock(
                book,
                "name,size,form,place,count",
                "Acer rubrum,#3,,B4,60",
                "Acer rubrum,#7,multi-stem,,12",
                "Acer rubrum,#3,,B4,5");
        String key = book.byName(plan.lots().get(0).name()).orElseThrow().text();
        assertThat(plan.lots()).extracting(LotDraft::lot).containsExactly(key + " #3 B4", key + " #7 multi-stem");
        assertThat(findings(plan)).containsExactly("4 name row.same-goods ROW_LEFT_OUT");
    }

    @Test
    void takesTheSizeFromBehindTheNameWhereAListHasNoColumnForIt() {
        ColumnMap map = MapProposal.of("list", List.of("Description", "Qty", "Price"), new Source("list.csv"));
        ImportPlan plan = Planned.plan(map, book(), "Description,Qty,Price", "Acer rubrum #7,40,$45.00");
        assertThat(plan.lots())
                .singleElement()
                .satisfies(lot -> assertThat(lot.size()).hasToString("#7"));
        assertThat(findings(plan)).containsExactly("2 Description name.goods KEPT");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        T1,Acer rubrum,#3,,B,-5,,,,,        | count      | count.negative
        T1,Acer rubrum,#3,,B,,,,,,          | count      | count.missing
        T1,Acer rubrum,#3,,B,many,,,,,      | count      | count.unknown
        T1,Acer rubrum,#3,,B,2.5,,,,,       | count      | count.unknown
        T1,Acer rubrum,3 gal,,B,5,,,,,      | size       | size.gallon
        T1,Acer rubrum,big,,B,5,,,,,        | size       | size.unknown
        T1,Acer rubrum,#3,bush,B,5,,,,,     | form       | term.unknown
        T1,Acer rubrum,#3,,B,5,spring,,,,   | ready_week | week.unknown
        T1,Ulmus minor,#3,,B,5,,,,,         | name       | plant.missing
        T1,???,#3,,B,5,,,,,                 | name       | name.unknown
        '',Acer rubrum,#3,,B,5,,,,,         | lot        | cell.empty
        """)
    void leavesOutARowThatWouldPromiseOnAGuess(String row, String heading, String problem) {
        ImportPlan plan = stock(book(), HEADINGS, row.replace("''", ""));
        assertThat(findings(plan)).containsExactly("2 " + heading + " " + problem + " ROW_LEFT_OUT");
        assertThat(plan.lots()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        T1,Acer rubrum,#3,,B,5,,cheap,,,               | price     | money.unknown
        T1,Acer rubrum,#3,,B,5,,,in bud; gorgeous,,    | condition | term.unknown
        T1,Acer rubrum,#3,,B,5,,,,,0000000000001       | gtin      | gtin.check
        T1,Acer rubrum,#3,,B,5,,,,,9.45E+12            | gtin      | cell.power
        """)
    void leavesOutACellThatMayBeAbsent(String row, String heading, String problem) {
        ImportPlan plan = stock(book(), HEADINGS, row);
        assertThat(findings(plan)).containsExactly("2 " + heading + " " + problem + " CELL_LEFT_OUT");
        assertThat(plan.lots()).hasSize(1);
    }

    @Test
    void refusesALotThatStandsTwice() {
        ImportPlan plan = stock(book(), HEADINGS, "T1,Acer rubrum,#3,,B,5,,,,,", "T1,Tilia cordata,#3,,B,5,,,,,");
        assertThat(findings(plan)).containsExactly("3 lot row.same-lot ROW_LEFT_OUT");
        assertThat(plan.findings().get(0).problem().details()).containsEntry("row", "2");
    }

    @Test
    void findsThePlantByItsFormerName() {
        ImportPlan plan = stock(book(), HEADINGS, "T1,Rufacer rubrum,#3,,B,5,,,,,");
        assertThat(findings(plan)).containsExactly("2 name name.synonym KEPT");
        assertThat(plan.lots().get(0).name()).hasToString("Acer rubrum");
    }

    @Test
    void refusesAKeyAndANameOfTwoPlants() {
        MemoryBook book = book();
        String key = book.byName(org.benchleaf.shared.name.BotanicalName.ofSpecies("Tilia", "cordata"))
                .orElseThrow()
                .text();
        assertThat(findings(stock(book, "key,lot,name,size,count", key + ",T1,Acer rubrum,#3,5")))
                .containsExactly("2 name plant.key-and-name ROW_LEFT_OUT");
        assertThat(stock(book, "key,lot,name,size,count", key + ",T1,,#3,5").lots())
                .hasSize(1);
    }
}
