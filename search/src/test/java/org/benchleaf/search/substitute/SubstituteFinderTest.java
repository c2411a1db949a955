package org.benchleaf.search.substitute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.plant;
import static org.benchleaf.search.substitute.SmallShop.FORTY;
import static org.benchleaf.search.substitute.SmallShop.names;
import static org.benchleaf.search.substitute.SmallShop.of;
import static org.benchleaf.search.substitute.SmallShop.shrub;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.SaleRuleSamples;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleDates;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SubstituteFinderTest {
    @TempDir
    Path folder;

    private SmallShop shop;

    @BeforeEach
    void open() {
        shop = SmallShop.open(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void keepsSistersAndOtherSpeciesApart() {
        SubstituteAnswer answer = shop.find(1, FORTY);

        assertThat(names(answer.of(Kin.SAME_SPECIES))).containsExactly("Itea virginica 'Rose'");
        assertThat(names(answer.of(Kin.SMALLER_SISTER))).containsExactly("Itea virginica 'Small'");
        assertThat(names(answer.of(Kin.OTHER_SPECIES))).startsWith("Fothergilla major", "Clethra alnifolia");
        assertThat(names(answer.best()).getFirst()).isEqualTo("Itea virginica 'Rose'");
    }

    @Test
    void neverProposesTheOriginalOrWhatCannotBeHad() {
        shop.stock(2, "#3, 0");
        shop.stock(4, "#5, 200");

        assertThat(names(shop.find(1, FORTY).all()))
                .doesNotContain("Itea virginica 'Ruby'", "Itea virginica 'Rose'", "Fothergilla major")
                .contains("Clethra alnifolia");
    }

    @Test
    void proposesSomeOfWhatIsAskedBehindEnoughAndSaysHowMany() {
        shop.stock(4, "#3, 25,, 22.00");

        List<Substitute> others = shop.find(1, FORTY).of(Kin.OTHER_SPECIES);

        assertThat(names(others).getFirst()).isEqualTo("Clethra alnifolia");
        Offer partial = others.stream()
                .filter(one -> one.match().plant().name().genus().equals("Fothergilla"))
                .findFirst()
                .flatMap(Substitute::offer)
                .orElseThrow();
        assertThat(partial.isPartial()).isTrue();
        assertThat(partial.delivered()).isEqualTo(25);
        assertThat(partial.dearer()).contains(350L);
    }

    @Test
    void neverProposesWhatIsNotHardyAtTheSite() {
        WeighedWish zone4 = WeighedWish.of(new Wish.HardyIn(HardinessZone.of(4, 'a')));

        assertThat(names(shop.find(1, FORTY, zone4).all()))
                .containsExactly("Fothergilla major", "Clethra alnifolia", "Acer rubrum");
    }

    @Test
    void neverProposesWhatIsProhibitedWhereItGoes() {
        shop.put(
                7,
                of("Berberis", "thunbergii"),
                shrub("90-150 cm", "4-8", "red")
                        .and(SaleRuleSamples.fact(SaleRuleSamples.said(prohibited("PA", "Berberis thunbergii")))));
        shop.stock(7, "#3, 500");
        Shipment toPennsylvania = Shipment.to(Destination.of(new Region("US-PA")), LocalDate.of(2027, 4, 12));
        SubstituteQuery query = new SubstituteQuery(
                shop.plantOf(1), Purpose.of(Use.HEDGE), FORTY, Optional.of(toPennsylvania), List.of(), NOW, 10);

        assertThat(names(shop.find(query, PublishedAdvice.builtIn()).all())).doesNotContain("Berberis thunbergii");
    }

    @Test
    void putsNoUnwelcomePlantInThePlaceOfAnother() {
        shop.put(
                7,
                of("Spiraea", "japonica"),
                shrub("90-150 cm", "4-8", "red", "cautions", "spreads: gardens - self-sows"));
        shop.stock(7, "#3, 500");
        PlantRecord ruled = plant(
                99,
                of("Euonymus", "alatus"),
                shrub("90-150 cm", "4-8", "red")
                        .and(SaleRuleSamples.fact(SaleRuleSamples.said(prohibited("NY", "Euonymus alatus")))));

        SubstituteAnswer answer = shop.find(ruled, FORTY);

        assertThat(answer.role().unwelcome()).isTrue();
        assertThat(names(answer.all())).doesNotContain("Spiraea japonica").isNotEmpty();
        assertThat(answer.passedOver())
                .extracting(passed -> passed.name().toString())
                .contains("Spiraea japonica");
    }

    @Test
    void saysWhatCanHarmMoreThanTheOriginal() {
        shop.put(
                4,
                of("Fothergilla", "major"),
                shrub("120-180 cm", "4-8", "red", "cautions", "toxic: dogs, horses - leaves"));

        Substitute one = shop.find(1, FORTY).of(Kin.OTHER_SPECIES).stream()
                .filter(each -> each.match().plant().name().genus().equals("Fothergilla"))
                .findFirst()
                .orElseThrow();

        assertThat(one.hazards()).hasSize(1);
        assertThat(one.hazards().getFirst().toString()).isEqualTo("toxic: dogs, horses - leaves");
    }

    @Test
    void warnsOfAHostOfTheSameTrouble() {
        PlantRecord box = plant(99, of("Buxus", "sempervirens"), facts("life_form", "shrub", "foliage", "evergreen"));
        shop.put(7, of("Sarcococca", "hookeriana"), facts("life_form", "shrub", "foliage", "evergreen"));
        shop.stock(7, "#3, 500");

        Substitute sarcococca = shop.find(box, FORTY).all().stream()
                .filter(each -> each.match().plant().name().genus().equals("Sarcococca"))
                .findFirst()
                .orElseThrow();

        // Henricot and others 2008 name Sarcococca as a host of boxwood blight; from memory
        assertThat(sarcococca.troubles()).extracting(Trouble::name).containsExactly("boxwood blight");
    }

    @Test
    void aMaleIsNoSubstituteForFruit() {
        Facts berries = facts("life_form", "shrub", "fruit_color", "red", "known_for", "fruit", "sex", "female");
        shop.put(7, of("Ilex", "verticillata").withCultivar("Berries"), berries);
        shop.put(8, of("Ilex", "verticillata").withCultivar("Pollen"), facts("life_form", "shrub", "sex", "male"));
        shop.put(9, of("Ilex", "verticillata"), facts("life_form", "shrub", "fruit_color", "red"));
        shop.put(
                10,
                of("Ilex", "verticillata").withCultivar("Other Pollen"),
                facts("life_form", "shrub", "sex", "male"));
        for (int serial = 8; serial <= 10; serial++) {
            shop.stock(serial, "#3, 100");
        }

        assertThat(names(shop.find(7, FORTY).of(Kin.SAME_SPECIES))).containsExactly("Ilex verticillata");
        assertThat(names(shop.find(8, FORTY).of(Kin.SAME_SPECIES)))
                .as("one pollinator for another")
                .contains("Ilex verticillata 'Other Pollen'");
    }

    @Test
    void aBambooIsReplacedByWoodyPlantsThatScreenAndAFloweringGrassByGrasses() {
        shop.put(
                7,
                of("Thuja", "occidentalis"),
                facts("life_form", "conifer", "foliage", "evergreen", "height", "300-600 cm", "uses", "screen"));
        shop.put(
                8,
                of("Carex", "plantaginea"),
                facts("life_form", "grass", "foliage", "evergreen", "height", "30-40 cm", "uses", "woodland"));
        shop.stock(7, "#3, 100");
        shop.stock(8, "#3, 100");
        String[] bamboo = {"life_form", "grass", "foliage", "evergreen", "height", "300-600 cm", "uses", "screen"};
        List<String> pampas = new ArrayList<>(Arrays.asList(bamboo));
        pampas.addAll(List.of("flower_color", "cream", "bloom", "Aug-Oct", "known_for", "flowers"));

        assertThat(names(shop.find(plant(99, of("Phyllostachys", "aurea"), facts(bamboo)), FORTY)
                        .best()))
                .startsWith("Thuja occidentalis");
        assertThat(names(shop.find(plant(99, of("Cortaderia", "selloana"), facts(pampas.toArray(String[]::new))), FORTY)
                        .best()))
                .startsWith("Carex plantaginea");
    }

    @Test
    void comparesWhatDiffersBeforeWhatAgrees() {
        Comparison comparison = shop.find(1, FORTY).all().stream()
                .filter(one -> one.match().plant().name().genus().equals("Clethra"))
                .findFirst()
                .orElseThrow()
                .comparison();

        assertThat(comparison.differs().getFirst().aspect()).isEqualTo(Aspect.FALL_COLOR);
        assertThat(comparison.differs().getFirst().relation()).isEqualTo(Point.Relation.OTHER);
        assertThat(comparison.better()).extracting(Point::aspect).contains(Aspect.HARDINESS);
        assertThat(comparison.agrees()).extracting(Point::aspect).contains(Aspect.KIND, Aspect.FOLIAGE, Aspect.LIGHT);
    }

    @Test
    void whatTheOriginalIsKnownForOutweighsAHeapOfSmallLikenesses() {
        String site = "full sun; part shade";
        shop.put(
                7,
                of("Viburnum", "alike"),
                shrub("90-150 cm", "5-9", "red", "habit", "rounded", "moisture", "medium", "deer", "rarely")
                        .and(facts("known_for", "flowers")
                                .fact(Attributes.KNOWN_FOR)
                                .orElseThrow()));
        shop.put(
                8,
                of("Cephalanthus", "wet"),
                facts(
                        "life_form",
                        "shrub",
                        "height",
                        "150-180 cm",
                        "exposure",
                        site,
                        "moisture",
                        "wet",
                        "known_for",
                        "wet ground"));
        shop.stock(7, "#3, 100,, 20.00");
        shop.stock(8, "#3, 100,, 20.00");
        PlantRecord original = plant(
                99,
                of("Frangula", "alnus"),
                facts(
                        "life_form",
                        "shrub",
                        "height",
                        "90-150 cm",
                        "habit",
                        "rounded",
                        "exposure",
                        site,
                        "moisture",
                        "medium; wet",
                        "deer",
                        "rarely",
                        "known_for",
                        "wet ground"));

        assertThat(names(shop.find(original, FORTY).of(Kin.OTHER_SPECIES)))
                .startsWith("Cephalanthus wet", "Viburnum alike");
    }

    @Test
    void aClimberThatMayAlsoCoverTheGroundIsReplacedByAClimber() {
        shop.put(
                7,
                of("Lonicera", "sempervirens"),
                facts("life_form", "vine", "height", "300-450 cm", "uses", "screen"));
        shop.put(8, of("Ajuga", "low"), facts("life_form", "groundcover", "height", "10-15 cm", "uses", "groundcover"));
        shop.stock(7, "#3, 100,, 20.00");
        shop.stock(8, "#3, 100,, 20.00");
        PlantRecord vine = plant(
                99,
                of("Lonicera", "japonica"),
                facts("life_form", "vine", "height", "450-900 cm", "uses", "groundcover; living wall"));

        assertThat(names(shop.find(vine, FORTY).best()).getFirst()).isEqualTo("Lonicera sempervirens");
    }

    @Test
    void comparesWhateverThereIsOfThemWhenStockDoesNotMatter() {
        shop.stock(2, "#3, 0");

        assertThat(names(shop.find(1, Demand.NONE).all())).contains("Itea virginica 'Rose'");
    }

    private static RuleMatch prohibited(String area, String species) {
        return new RuleMatch(
                area + " " + species,
                RuleKind.SALE,
                RuleArea.read(area).orThrow(),
                SaleStanding.PROHIBITED,
                Manner.NAMED,
                species,
                new RuleDates(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                "",
                new Source("a gazette"),
                LocalDate.of(2026, 11, 25));
    }
}
