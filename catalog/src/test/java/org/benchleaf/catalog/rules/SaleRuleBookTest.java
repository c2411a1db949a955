package org.benchleaf.catalog.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.rules.DemoRules.ask;
import static org.benchleaf.catalog.rules.DemoRules.rows;

import java.time.LocalDate;
import java.util.List;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.SaleVerdict.Answer;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SaleRuleBookTest {
    private static final SaleRuleBook BOOK = DemoRules.book();
    private static final Destination PENNSYLVANIA = Destination.read("PA").orThrow();

    @Test
    void demoListsHaveNoFinding() {
        assertThat(DemoRules.lists()).allSatisfy(list -> {
            assertThat(list.findings()).isEmpty();
            assertThat(list.rules()).isNotEmpty();
        });
    }

    // PROHIBITED blocks: PA Pyrus 2024-02-10 (lawnandlandscape.com). REGULATED allows with a notice: NY burning bush
    // (nysnla.com), MD Tier 2 (COMAR 15.06.04.06). ADVISORY only warns: VA (from memory)
    @ParameterizedTest
    @CsvSource(textBlock = """
        Pyrus calleryana 'Bradford', PA, 2024-02-09, NO_RULE
        Pyrus calleryana 'Bradford', PA, 2024-02-10, BARRED
        Euonymus alatus,             NY, 2026-11-25, ON_CONDITION
        Wisteria sinensis,           MD, 2026-11-25, ON_CONDITION
        Iris pseudacorus,            MD, 2026-11-25, BARRED
        Pyrus calleryana,            VA, 2026-11-25, ADVISED_AGAINST
        Acer rubrum,                 PA, 2026-11-25, NO_RULE
        Acer rubrum,                 WY, 2026-11-25, NOT_COVERED
        """)
    void prohibitedBlocksRestrictedNeedsANoticeAdvisoryOnlyWarns(String plant, String to, String on, Answer answer) {
        assertThat(ask(BOOK, plant, to, on).answer()).isEqualTo(answer);
    }

    @Test
    void restrictedSaleNamesTheNoticeToPrint() {
        SaleVerdict verdict = ask(BOOK, "Euonymus alatus 'Compactus'", "NY", "2026-11-25");

        assertThat(verdict.deciding().orElseThrow().match().notice())
                .isEqualTo("6 NYCRR 575: may be sold when labelled as invasive");
        assertThat(verdict.compiledOn()).isEqualTo(LocalDate.of(2026, 11, 25));
    }

    // MA phase-out table, updated 2025-12-08: Miscanthus sinensis may be sold through 2026-12-31, Pyrus calleryana
    // through 2028-12-31; new receipt barred from 2025-12-08 and 2024-09-19
    @ParameterizedTest
    @CsvSource(textBlock = """
        Miscanthus sinensis 'Gracillimus', 2025-12-07, false, false
        Miscanthus sinensis 'Gracillimus', 2025-12-08, false, true
        Miscanthus sinensis 'Gracillimus', 2026-12-30, false, true
        Miscanthus sinensis 'Gracillimus', 2026-12-31, false, true
        Miscanthus sinensis 'Gracillimus', 2027-01-01, true,  true
        Pyrus calleryana,                  2024-09-18, false, false
        Pyrus calleryana,                  2024-09-19, false, true
        Pyrus calleryana,                  2028-12-31, false, true
        Pyrus calleryana,                  2029-01-01, true,  true
        """)
    void saleAndReceiptHaveDatesOfTheirOwn(String plant, String on, boolean noSale, boolean noReceipt) {
        SaleVerdict verdict = ask(BOOK, plant, "MA", on);

        assertThat(verdict.sale().equals(java.util.Optional.of(SaleStanding.PROHIBITED)))
                .isEqualTo(noSale);
        assertThat(verdict.receipt().equals(java.util.Optional.of(SaleStanding.PROHIBITED)))
                .isEqualTo(noReceipt);
        assertThat(verdict.rulings()).hasSize(1);
    }

    @Test
    void shippingInFromOutsideIsAReceipt() {
        Shipment within = Shipment.to(Destination.read("MA").orThrow(), LocalDate.of(2026, 12, 30));

        assertThat(ask(BOOK, "Miscanthus sinensis", within).answer()).isEqualTo(Answer.NO_RULE);
        assertThat(ask(
                                BOOK,
                                "Miscanthus sinensis",
                                within.from(Destination.read("MA").orThrow()))
                        .answer())
                .isEqualTo(Answer.NO_RULE);
        assertThat(ask(BOOK, "Miscanthus sinensis", within.from(PENNSYLVANIA)).answer())
                .isEqualTo(Answer.BARRED);
    }

    // MA: the rule covers cultivars and hybrids. NY: 'Aurea' barberry conditionally exempt (dec.ny.gov). MD: Nandina
    // except Firepower (COMAR 15.06.04.06)
    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
        Miscanthus ×giganteus,              MA, 2027-01-01, HYBRID,               BARRED
        Berberis thunbergii 'Crimson Pygmy',NY, 2026-11-25, NAMED,                BARRED
        Berberis thunbergii 'Aurea',        NY, 2026-11-25, CONDITIONALLY_EXEMPT, ON_CONDITION
        Berberis ×ottawensis 'Superba',     NY, 2026-11-25, NAMED,                BARRED
        Nandina domestica 'Moyers Red',     MD, 2026-11-25, NAMED,                ON_CONDITION
        Nandina domestica 'Firepower',      MD, 2026-11-25, EXEMPT,               NO_RULE
        Nandina domestica 'Fire Power',     MD, 2026-11-25, EXEMPT,               NO_RULE
        Berberis 'Rose Glow',               NY, 2026-11-25, UNCLEAR,              UNCLEAR
        Berberis ×media,                    NY, 2026-11-25, UNCLEAR,              UNCLEAR
        """)
    void ruleCoversCultivarsAndHybridsUnlessExemptedByName(
            String plant, String to, String on, Manner manner, Answer answer) {
        SaleVerdict verdict = ask(BOOK, plant, to, on);

        assertThat(verdict.rulings().stream().map(ruling -> ruling.match().manner()))
                .contains(manner);
        assertThat(verdict.answer()).isEqualTo(answer);
    }

    @Test
    void hybridOfOtherParentsIsOutside() {
        // Acer ×freemanii is A. rubrum × A. saccharinum, not A. platanoides; from memory
        assertThat(ask(BOOK, "Acer ×freemanii 'Armstrong'", "NY", "2026-11-25").rulings())
                .isEmpty();
    }

    @Test
    void genusRuleLetsACultivarOffByName() {
        SaleRuleBook book =
                SaleRuleBook.of(rows("X-1,,US-PA,Nandina,,,prohibited,,,2020-01-01,,'Firepower',,a test,2026-01-01")
                        .rules());

        assertThat(ask(book, "Nandina domestica 'Gulf Stream'", "PA", "2026-01-01")
                        .answer())
                .isEqualTo(Answer.BARRED);
        assertThat(ask(book, "Nandina domestica 'Firepower'", "PA", "2026-01-01")
                        .answer())
                .isEqualTo(Answer.NO_RULE);
    }

    @Test
    void ruleMayLeaveOutCultivarsOrHybrids() {
        SaleRuleBook book = SaleRuleBook.of(
                rows("X-1,,US-PA,Berberis thunbergii,,none,prohibited,,,2020-01-01,,,,a test,2026-01-01")
                        .rules());

        assertThat(ask(book, "Berberis thunbergii", "PA", "2026-01-01").answer())
                .isEqualTo(Answer.BARRED);
        assertThat(ask(book, "Berberis thunbergii 'Aurea'", "PA", "2026-01-01").answer())
                .isEqualTo(Answer.NO_RULE);
        assertThat(ask(book, "Berberis ×ottawensis", "PA", "2026-01-01").answer())
                .isEqualTo(Answer.NO_RULE);
    }

    // Suffolk and Nassau counties 2014 (day from memory), New York State 2016-03-10 (docslib.org/download/2878231)
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        NY / Suffolk        | BARRED
        Nassau County, NY   | BARRED
        NY / Albany         | NO_RULE
        NY                  | NO_RULE
        """)
    void countyIsStricterThanItsState(String to, Answer answer) {
        assertThat(ask(BOOK, "Berberis thunbergii", to, "2015-02-01").answer()).isEqualTo(answer);
        assertThat(ask(BOOK, "Berberis thunbergii", to, "2016-03-10").answer()).isEqualTo(Answer.BARRED);
    }

    @Test
    void stateWithoutACountyPointsAtTheCountiesThatAreStricter() {
        SaleVerdict verdict = ask(BOOK, "Berberis thunbergii", "NY", "2015-02-01");

        assertThat(verdict.rulings())
                .extracting(Ruling::reach, Ruling::sale)
                .contains(org.assertj.core.groups.Tuple.tuple(Ruling.Reach.SOME_COUNTY, Phase.IN_FORCE));
    }

    // Euonymus alata, Berberis thunbergia (misprint), blunt-leaved privet: names as lists print them
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Euonymus alata",
                "Euonymus alatus 'Compactus'",
                "Berberis thunbergia",
                "Berberis thunbergi",
                "Ligustrum obtusifolium",
                "Frangula alnus 'Columnaris'",
                "Rhamnus frangula"
            })
    void synonymsAndSpellingsMatch(String plant) {
        assertThat(ask(BOOK, plant, "PA", "2026-11-25").answer()).isEqualTo(Answer.BARRED);
    }

    @Test
    void synonymOfThePlantMatchesAndSaysAsWhatItIsListed() {
        SaleVerdict verdict = ask(BOOK, "Fictus novus", "PA", "2026-11-25", "Lythrum salicaria", "Acer rubrum");

        assertThat(verdict.answer()).isEqualTo(Answer.BARRED);
        assertThat(verdict.deciding().orElseThrow().match())
                .satisfies(match -> assertThat(match.manner()).isEqualTo(Manner.OTHER_NAME))
                .satisfies(match -> assertThat(match.listedAs()).isEqualTo("Lythrum salicaria"));
    }

    @Test
    void otherSpeciesOfTheGenusIsOutside() {
        assertThat(ask(BOOK, "Euonymus americanus", "PA", "2026-11-25").rulings())
                .isEmpty();
        assertThat(ask(BOOK, "Wisteria frutescens", "MD", "2026-11-25").rulings())
                .isEmpty();
        assertThat(ask(BOOK, "Iris versicolor", "MD", "2026-11-25").rulings()).isEmpty();
    }

    // box tree moth: federal quarantine of Erie, Niagara and Orleans, NY, 2022-03-23 (govdelivery.com 31046a4)
    @Test
    void hostLeavesAQuarantineOnlyOnCondition() {
        LocalDate day = LocalDate.of(2026, 11, 25);
        Destination niagara = Destination.read("NY / Niagara").orThrow();
        Destination erie = Destination.read("NY / Erie").orThrow();

        assertThat(ask(
                                BOOK,
                                "Buxus 'Green Velvet'",
                                Shipment.to(PENNSYLVANIA, day).from(niagara))
                        .answer())
                .isEqualTo(Answer.ON_CONDITION);
        assertThat(ask(BOOK, "Buxus 'Green Velvet'", Shipment.to(erie, day).from(niagara)).rulings().stream()
                        .map(Ruling::reach))
                .doesNotContain(Ruling.Reach.LEAVING)
                .contains(Ruling.Reach.INSIDE);
        assertThat(ask(BOOK, "Ilex glabra", Shipment.to(PENNSYLVANIA, day).from(niagara))
                        .rulings())
                .isEmpty();
    }

    // emerald ash borer: federal quarantine lifted 2021-01-14; from memory
    @Test
    void ruleThatWasLiftedHoldsNoLonger() {
        assertThat(ask(BOOK, "Fraxinus americana", "PA", "2021-01-13").answer()).isEqualTo(Answer.ON_CONDITION);
        assertThat(ask(BOOK, "Fraxinus americana", "PA", "2021-01-14").answer()).isEqualTo(Answer.NO_RULE);
    }

    @Test
    void whatIsSaidOfAPlantReadsBackEqual() {
        for (String plant : List.of("Berberis thunbergii 'Aurea'", "Acer rubrum", "Buxus sempervirens")) {
            PlantRules said = BOOK.of(NameReader.read(plant).known().orElseThrow(), List.of())
                    .orElseThrow();
            assertThat(PlantRules.read(said.toString()).orThrow()).isEqualTo(said);
        }
        assertThat(PlantRules.read("2026-13-01\u001eUS-PA").toOptional()).isEmpty();
        assertThat(PlantRules.read("").toOptional()).isEmpty();
    }

    @Test
    void withoutListsNothingIsSaid() {
        assertThat(SaleRuleBook.empty()
                        .of(NameReader.read("Acer rubrum").known().orElseThrow(), List.of()))
                .isEmpty();
    }
}
