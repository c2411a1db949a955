package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.intake.Planned.findings;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.fact.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Lists of three invented growers, each with habits of its own, read by what is proposed for them.
class GrowersListsTest {
    private static final MemoryBook PLANTS = new MemoryBook()
            .apply(Planned.plants(
                    new MemoryBook(), "name", "Acer rubrum", "Itea virginica", "Clethra alnifolia", "Ilex glabra"));

    private static ColumnMap map(String text) {
        try (Sheet sheet = SheetReader.open("list.csv", text.getBytes(StandardCharsets.UTF_8))) {
            List<List<String>> sample = sheet.rows().map(RawRow::cells).toList();
            return MapProposal.of("list", sheet.headings(), sample, new Source("list.csv"));
        }
    }

    private static ImportPlan plan(String text, MemoryBook book) {
        try (Sheet sheet = SheetReader.open("list.csv", text.getBytes(StandardCharsets.UTF_8))) {
            return ImportPlanner.plan(sheet, map(text), book);
        }
    }

    @Test
    void readsAnAvailabilityListWithoutUsefulHeadings() {
        ImportPlan plan = plan("""
            Lot;What;Col A;Col B;Col C
            A1;Acer rubrum;#7;12;$45.00
            A2;Itea virginica;#3;60;$21.50
            A3;Clethra alnifolia;#3;40;$19.75
            ;;;112;
            """.replace("Col B", "Qty"), PLANTS);
        assertThat(findings(plan)).containsExactly("5 - row.total PASSED_OVER");
        assertThat(plan.lots()).hasSize(3);
        assertThat(plan.lots().get(1).size()).hasToString("#3");
        assertThat(plan.lots().get(1).price().map(Object::toString)).contains("21.50 USD");
    }

    @Test
    void readsAPlantListWithBareFeetAndZonesUnderWordsOfItsOwn() {
        ImportPlan plan = plan("""
            Latin,Cold,Ht,Width (in),Light,Months
            Acer rubrum,3-9,40-60,360-480,full sun,Mar-Apr
            Itea virginica,5-9,3-5,36-60,full sun; part shade,May-Jun
            Clethra alnifolia,3-9,5-8,48-72,part shade,Jul-Aug
            Ilex glabra,5-9,5-8,60-96,full sun,May-Jun
            """, new MemoryBook());
        assertThat(plan.plants()).hasSize(4);
        assertThat(plan.plants().get(1).facts())
                .extracting(fact -> fact.attribute() + " " + fact.text())
                .containsExactlyInAnyOrder(
                        "hardiness 5-9",
                        "height 91-152 cm",
                        "spread 91-152 cm",
                        "exposure full sun; part shade",
                        "bloom May-Jun");
        assertThat(findings(plan)).containsExactly("2 Ht column.approximate KEPT");
    }

    @Test
    void readsAListInCapitalsWithRepeatedHeadingsOfUnitsAndAFooter() {
        ImportPlan plan = plan("""
            Botanical Name|USDA Zone|Mature Height (ft)|Fall Color
            ACER RUBRUM|3-9|40-60|red
            ITEA VIRGINICA|5-9|3-5|red; purple
            GRAND TOTAL|||
            """, new MemoryBook());
        assertThat(plan.plants())
                .extracting(draft -> draft.name().toString())
                .containsExactly("Acer rubrum", "Itea virginica");
        assertThat(plan.plants().get(0).facts())
                .anyMatch(fact -> fact.attribute().equals(Attributes.HEIGHT));
        assertThat(plan.findings())
                .extracting(finding -> finding.problem().key())
                .contains("row.total", "name.capitals");
        assertThat(plan.rowsLeftOut()).isZero();
    }

    // GTINs with right check digits: shared/check-values gs1-check-digits, and 012345678905 of GS1's own examples
    @ParameterizedTest
    @CsvSource({
        "12345678905, 012345678905, gtin.zeros",
        "9.780306406157E12, 9780306406157, gtin.power",
        "9.45E+12, , cell.power",
        "12345678904, , gtin.form"
    })
    void putsAGtinRightOnlyWhenItsCheckDigitProvesIt(String cell, String meant, String problem) {
        ImportPlan plan = Planned.stock(PLANTS, "lot,name,size,count,gtin", "A1,Acer rubrum,#3,5," + cell);
        assertThat(plan.findings())
                .extracting(finding -> finding.problem().key())
                .containsExactly(problem);
        assertThat(plan.lots().get(0).gtin().map(Object::toString).orElse(null)).isEqualTo(meant);
    }

    @Test
    void doubtsALotThatLostItsZeros() {
        MemoryBook book = new MemoryBook().apply(Planned.plants(new MemoryBook(), "name", "Acer rubrum"));
        book.apply(Planned.stock(book, "lot,name,size,count", "0012,Acer rubrum,#3,5"));
        ImportPlan plan = Planned.stock(book, "lot,name,size,count", "12,Acer rubrum,#3,7");
        assertThat(findings(plan)).containsExactly("2 lot lot.zeros ROW_LEFT_OUT");
    }

    @Test
    void passesOverARowThatRepeatsAnotherCellByCell() {
        ImportPlan plan = Planned.plants(new MemoryBook(), "name,habit", "Acer rubrum,oval", "Acer rubrum,oval");
        assertThat(findings(plan)).containsExactly("3 - row.duplicate PASSED_OVER");
        assertThat(plan.rows()).isEqualTo(1);
    }

    @Test
    void readsFactsAndStockOfOneListTogether() {
        ImportPlan plan = plan("""
            Botanical Name,Size,Available,Price,Zone,Height,Bloom Time
            Acer rubrum,#7,12,$45.00,3-9,40-60 ft,Mar-Apr
            Acer rubrum,#15,5,$120.00,3-9,40-60 ft,Mar-Apr
            Fothergilla gardenii,#3,60,$24.50,5-8,2-3 ft,Apr-May
            Nyssa sylvatica,big,60,$24.50,4-9,30-50 ft,May
            """, PLANTS);
        assertThat(plan.plants())
                .as("a row a plant, however many lots it has; none of a row that is left out")
                .extracting(draft -> draft.name().toString())
                .containsExactly("Acer rubrum", "Fothergilla gardenii");
        assertThat(plan.plants().get(1).facts())
                .extracting(fact -> fact.attribute() + " " + fact.text())
                .contains("hardiness 5-8", "height 61-91 cm", "bloom Apr-May");
        assertThat(plan.lots())
                .extracting(LotDraft::lot)
                .containsExactly("Acer rubrum #7", "Acer rubrum #15", "Fothergilla gardenii #3");
        assertThat(findings(plan)).containsExactly("5 Size size.unknown ROW_LEFT_OUT");
    }
}
