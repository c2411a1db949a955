package org.benchleaf.search.substitute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Lists.advised;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.plant;
import static org.benchleaf.search.Plants.stock;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.SaleRuleSamples;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleDates;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SubstituteFinderTest {
    private static final Optional<StockSize> NO_3 = StockSize.read("#3").toOptional();
    private static final Demand FORTY = new Demand(40, NO_3, Optional.empty(), true);

    @TempDir
    Path folder;

    private final InMemoryCatalogView catalog = new InMemoryCatalogView();
    private PlantIndex index;

    /// Facts made up for the test, in the shape of the trade's.
    @BeforeEach
    void aSmallShop() {
        put(1, of("Itea", "virginica").withCultivar("Ruby"), shrub("90-150 cm", "5-9", "red"));
        put(2, of("Itea", "virginica").withCultivar("Rose"), shrub("90-150 cm", "5-9", "red"));
        put(3, of("Itea", "virginica").withCultivar("Small"), shrub("45-60 cm", "5-9", "red"));
        put(4, of("Fothergilla", "major"), shrub("120-180 cm", "4-8", "red"));
        put(5, of("Clethra", "alnifolia"), shrub("120-180 cm", "3-9", "yellow"));
        put(6, of("Acer", "rubrum"), facts("life_form", "tree", "height", "1200-1800 cm", "fall_color", "red"));
        for (int serial = 2; serial <= 6; serial++) {
            catalog.put(stock(serial, "#3, 100,, 20.00"));
        }
        catalog.put(stock(1, "#3, 0,, 18.50"));
        index = PlantIndex.open(folder, catalog);
    }

    @AfterEach
    void close() {
        index.close();
    }

    private void put(long serial, BotanicalName name, Facts facts) {
        catalog.put(plant(serial, name, facts));
    }

    private static BotanicalName of(String genus, String species) {
        return BotanicalName.ofSpecies(genus, species);
    }

    private static Facts shrub(String height, String zones, String fall, String... more) {
        List<String> pairs = new ArrayList<>(List.of(
                "life_form",
                "shrub",
                "foliage",
                "deciduous",
                "height",
                height,
                "hardiness",
                zones,
                "fall_color",
                fall,
                "exposure",
                "full sun; part shade",
                "uses",
                "hedge; massing"));
        pairs.addAll(Arrays.asList(more));
        return facts(pairs.toArray(String[]::new));
    }

    private SubstituteAnswer find(long serial, Demand demand, WeighedWish... wishes) {
        return find(
                catalog.plant(org.benchleaf.shared.code.PlantKey.ofSerial(serial))
                        .orElseThrow(),
                demand,
                wishes);
    }

    private SubstituteAnswer find(PlantRecord original, Demand demand, WeighedWish... wishes) {
        index.catchUp();
        // by its facts alone, whatever lists say of plants of that name
        return new SubstituteFinder(catalog, index)
                .knowing(PublishedAdvice.of(List.of()))
                .find(new SubstituteQuery(
                        original, Purpose.NOT_SAID, demand, Optional.empty(), List.of(wishes), NOW, 3));
    }

    private static List<String> names(List<Substitute> substitutes) {
        return substitutes.stream()
                .map(one -> one.match().plant().name().toString())
                .toList();
    }

    @Test
    void keepsSistersAndOtherSpeciesApart() {
        SubstituteAnswer answer = find(1, FORTY);

        assertThat(names(answer.of(Kin.SAME_SPECIES))).containsExactly("Itea virginica 'Rose'");
        assertThat(names(answer.of(Kin.SMALLER_SISTER))).containsExactly("Itea virginica 'Small'");
        assertThat(names(answer.of(Kin.OTHER_SPECIES))).startsWith("Fothergilla major", "Clethra alnifolia");
        assertThat(names(answer.best()).getFirst()).isEqualTo("Itea virginica 'Rose'");
    }

    @Test
    void neverProposesTheOriginalOrWhatCannotBeHad() {
        catalog.put(stock(2, "#3, 0"));
        catalog.put(stock(4, "#5, 200"));

        assertThat(names(find(1, FORTY).all()))
                .doesNotContain("Itea virginica 'Ruby'", "Itea virginica 'Rose'", "Fothergilla major")
                .contains("Clethra alnifolia");
    }

    @Test
    void proposesSomeOfWhatIsAskedBehindEnoughAndSaysHowMany() {
        catalog.put(stock(4, "#3, 25,, 22.00"));

        List<Substitute> others = find(1, FORTY).of(Kin.OTHER_SPECIES);

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

        assertThat(names(find(1, FORTY, zone4).all()))
                .containsExactly("Fothergilla major", "Clethra alnifolia", "Acer rubrum");
    }

    @Test
    void neverProposesWhatIsProhibitedWhereItGoes() {
        put(
                7,
                of("Berberis", "thunbergii"),
                shrub("90-150 cm", "4-8", "red")
                        .and(SaleRuleSamples.fact(SaleRuleSamples.said(prohibited("PA", "Berberis thunbergii")))));
        catalog.put(stock(7, "#3, 500"));
        index.catchUp();
        Shipment toPennsylvania = Shipment.to(Destination.of(new Region("US-PA")), LocalDate.of(2027, 4, 12));
        SubstituteQuery query = new SubstituteQuery(
                catalog.plant(org.benchleaf.shared.code.PlantKey.ofSerial(1)).orElseThrow(),
                Purpose.of(Use.HEDGE),
                FORTY,
                Optional.of(toPennsylvania),
                List.of(),
                NOW,
                10);

        assertThat(names(new SubstituteFinder(catalog, index).find(query).all()))
                .doesNotContain("Berberis thunbergii");
    }

    @Test
    void putsNoUnwelcomePlantInThePlaceOfAnother() {
        put(7, of("Spiraea", "japonica"), shrub("90-150 cm", "4-8", "red", "cautions", "spreads: gardens - self-sows"));
        catalog.put(stock(7, "#3, 500"));
        PlantRecord ruled = plant(
                99,
                of("Euonymus", "alatus"),
                shrub("90-150 cm", "4-8", "red")
                        .and(SaleRuleSamples.fact(SaleRuleSamples.said(prohibited("NY", "Euonymus alatus")))));

        SubstituteAnswer answer = find(ruled, FORTY);

        assertThat(answer.role().unwelcome()).isTrue();
        assertThat(names(answer.all())).doesNotContain("Spiraea japonica").isNotEmpty();
        assertThat(answer.passedOver())
                .extracting(passed -> passed.name().toString())
                .contains("Spiraea japonica");
    }

    @Test
    void saysWhatCanHarmMoreThanTheOriginal() {
        put(
                4,
                of("Fothergilla", "major"),
                shrub("120-180 cm", "4-8", "red", "cautions", "toxic: dogs, horses - leaves"));

        Substitute one = find(1, FORTY).of(Kin.OTHER_SPECIES).stream()
                .filter(each -> each.match().plant().name().genus().equals("Fothergilla"))
                .findFirst()
                .orElseThrow();

        assertThat(one.hazards()).hasSize(1);
        assertThat(one.hazards().getFirst().toString()).isEqualTo("toxic: dogs, horses - leaves");
    }

    @Test
    void warnsOfAHostOfTheSameTrouble() {
        PlantRecord box = plant(99, of("Buxus", "sempervirens"), facts("life_form", "shrub", "foliage", "evergreen"));
        put(7, of("Sarcococca", "hookeriana"), facts("life_form", "shrub", "foliage", "evergreen"));
        catalog.put(stock(7, "#3, 500"));

        Substitute sarcococca = find(box, FORTY).all().stream()
                .filter(each -> each.match().plant().name().genus().equals("Sarcococca"))
                .findFirst()
                .orElseThrow();

        // Henricot and others 2008 name Sarcococca as a host of boxwood blight; from memory
        assertThat(sarcococca.troubles()).extracting(Trouble::name).containsExactly("boxwood blight");
    }

    private static final Publication FLYER =
            new Publication("An agency", Set.of(), "A flyer", "2020", "https://example.org/1");
    private static final Publication COLUMN =
            new Publication("A garden", Set.of(), "A column", "2021", "https://example.org/2");

    private static final Publication LEAFLET =
            new Publication("A county", Set.of(), "A leaflet", "2022", "https://example.org/3");

    /// Fothergilla is nearer in all facts, and Clethra is what lists name.
    private SubstituteAnswer findAdvised(Demand demand, Advised... lists) {
        return findAdvised(demand, List.of(), lists);
    }

    private SubstituteAnswer findAdvised(Demand demand, List<WeighedWish> asked, Advised... lists) {
        index.catchUp();
        PlantRecord original = plant(99, of("Euonymus", "alatus"), shrub("120-180 cm", "4-8", "red"));
        return new SubstituteFinder(catalog, index)
                .knowing(PublishedAdvice.of(List.of(lists)))
                .find(new SubstituteQuery(original, Purpose.NOT_SAID, demand, Optional.empty(), asked, NOW, 3));
    }

    /// What lists and facts say together of a plant of the catalog.
    private SubstituteAnswer advisedOn(long serial, Advised... lists) {
        index.catchUp();
        PlantRecord original = catalog.plant(org.benchleaf.shared.code.PlantKey.ofSerial(serial))
                .orElseThrow();
        return new SubstituteFinder(catalog, index)
                .knowing(PublishedAdvice.of(List.of(lists)))
                .find(new SubstituteQuery(original, Purpose.NOT_SAID, FORTY, Optional.empty(), List.of(), NOW, 3));
    }

    @Test
    void ofAPlantWithoutAnyFactOnlyWhatListsNameIsProposed() {
        index.catchUp();
        SubstituteAnswer answer = new SubstituteFinder(catalog, index)
                .knowing(PublishedAdvice.of(List.of(
                        advised("Retama monosperma", "Fothergilla", FLYER),
                        advised("Retama monosperma", "Ceanothus", FLYER),
                        advised("Retama monosperma", "Ceanothus", COLUMN))))
                .find(new SubstituteQuery(
                        plant(99, of("Retama", "monosperma"), Facts.of(List.of())),
                        Purpose.NOT_SAID,
                        FORTY,
                        Optional.empty(),
                        List.of(),
                        NOW,
                        3));

        assertThat(names(answer.all())).containsExactly("Fothergilla major");
        assertThat(answer.advised())
                .as("here or not, what most publishers name first")
                .containsExactly(new TaxonName("Ceanothus"), new TaxonName("Fothergilla"));
    }

    @Test
    void aMaleIsNoSubstituteForFruit() {
        Facts berries = facts("life_form", "shrub", "fruit_color", "red", "known_for", "fruit", "sex", "female");
        put(7, of("Ilex", "verticillata").withCultivar("Berries"), berries);
        put(8, of("Ilex", "verticillata").withCultivar("Pollen"), facts("life_form", "shrub", "sex", "male"));
        put(9, of("Ilex", "verticillata"), facts("life_form", "shrub", "fruit_color", "red"));
        put(10, of("Ilex", "verticillata").withCultivar("Other Pollen"), facts("life_form", "shrub", "sex", "male"));
        for (int serial = 8; serial <= 10; serial++) {
            catalog.put(stock(serial, "#3, 100"));
        }

        assertThat(names(find(7, FORTY).of(Kin.SAME_SPECIES))).containsExactly("Ilex verticillata");
        assertThat(names(find(8, FORTY).of(Kin.SAME_SPECIES)))
                .as("one pollinator for another")
                .contains("Ilex verticillata 'Other Pollen'");
    }

    @Test
    void aPlantOfTheCatalogWithoutAnyFactIsReplacedByItsSistersToo() {
        put(7, of("Retama", "monosperma"), Facts.of(List.of()));
        put(8, of("Retama", "monosperma").withCultivar("White Veil"), Facts.of(List.of()));
        catalog.put(stock(8, "#3, 100"));

        assertThat(names(advisedOn(7, advised("Retama monosperma", "Fothergilla", FLYER))
                        .all()))
                .contains("Retama monosperma 'White Veil'", "Fothergilla major");
    }

    @Test
    void aBambooIsReplacedByWoodyPlantsThatScreenAndAFloweringGrassByGrasses() {
        put(
                7,
                of("Thuja", "occidentalis"),
                facts("life_form", "conifer", "foliage", "evergreen", "height", "300-600 cm", "uses", "screen"));
        put(
                8,
                of("Carex", "plantaginea"),
                facts("life_form", "grass", "foliage", "evergreen", "height", "30-40 cm", "uses", "woodland"));
        catalog.put(stock(7, "#3, 100"));
        catalog.put(stock(8, "#3, 100"));
        String[] bamboo = {"life_form", "grass", "foliage", "evergreen", "height", "300-600 cm", "uses", "screen"};
        List<String> pampas = new ArrayList<>(Arrays.asList(bamboo));
        pampas.addAll(List.of("flower_color", "cream", "bloom", "Aug-Oct", "known_for", "flowers"));

        assertThat(names(find(plant(99, of("Phyllostachys", "aurea"), facts(bamboo)), FORTY)
                        .best()))
                .startsWith("Thuja occidentalis");
        assertThat(names(find(plant(99, of("Cortaderia", "selloana"), facts(pampas.toArray(String[]::new))), FORTY)
                        .best()))
                .startsWith("Carex plantaginea");
    }

    @Test
    void whatSeveralPublishedListsNameInsteadComesBeforeWhatIsAsLikeAndSaysWhoNamesIt() {
        assertThat(names(findAdvised(FORTY).best())).startsWith("Fothergilla major");

        SubstituteAnswer advised = findAdvised(
                FORTY,
                advised("Euonymus alatus", "Clethra alnifolia", FLYER),
                advised("Euonymus", "Clethra", COLUMN),
                advised("Euonymus alatus", "Clethra", LEAFLET));

        assertThat(names(advised.best())).startsWith("Clethra alnifolia");
        assertThat(advised.best().getFirst().namedBy()).containsExactly("A county", "A garden", "An agency");
        assertThat(advised.best().get(1).namedBy()).isEmpty();
    }

    @Test
    void aShopsOwnWordComesBeforeWhatIsAsLikeAndBehindWhatMeetsMoreOfWhatIsAsked() {
        Advised own = advised("Euonymus alatus", "Clethra alnifolia", Publication.own("This shop"));
        WeighedWish red =
                WeighedWish.of(new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.of(ColorFamily.RED)));

        assertThat(names(findAdvised(FORTY, own).best())).startsWith("Clethra alnifolia");
        assertThat(names(findAdvised(FORTY, List.of(red.weighing(0.5)), own).best()))
                .startsWith("Fothergilla major");
    }

    @Test
    void whatListsNameIsNotProposedWhenItCannotBeHad() {
        catalog.put(stock(5, "#3, 0"));

        assertThat(names(findAdvised(FORTY, advised("Euonymus alatus", "Clethra alnifolia", FLYER))
                        .all()))
                .doesNotContain("Clethra alnifolia");
    }

    @Test
    void comparesWhatDiffersBeforeWhatAgrees() {
        Comparison comparison = find(1, FORTY).all().stream()
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
        put(
                7,
                of("Viburnum", "alike"),
                shrub("90-150 cm", "5-9", "red", "habit", "rounded", "moisture", "medium", "deer", "rarely")
                        .and(facts("known_for", "flowers")
                                .fact(Attributes.KNOWN_FOR)
                                .orElseThrow()));
        put(
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
        catalog.put(stock(7, "#3, 100,, 20.00"));
        catalog.put(stock(8, "#3, 100,, 20.00"));
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

        assertThat(names(find(original, FORTY).of(Kin.OTHER_SPECIES))).startsWith("Cephalanthus wet", "Viburnum alike");
    }

    @Test
    void aClimberThatMayAlsoCoverTheGroundIsReplacedByAClimber() {
        put(7, of("Lonicera", "sempervirens"), facts("life_form", "vine", "height", "300-450 cm", "uses", "screen"));
        put(8, of("Ajuga", "low"), facts("life_form", "groundcover", "height", "10-15 cm", "uses", "groundcover"));
        catalog.put(stock(7, "#3, 100,, 20.00"));
        catalog.put(stock(8, "#3, 100,, 20.00"));
        PlantRecord vine = plant(
                99,
                of("Lonicera", "japonica"),
                facts("life_form", "vine", "height", "450-900 cm", "uses", "groundcover; living wall"));

        assertThat(names(find(vine, FORTY).best()).getFirst()).isEqualTo("Lonicera sempervirens");
    }

    @Test
    void comparesWhateverThereIsOfThemWhenStockDoesNotMatter() {
        catalog.put(stock(2, "#3, 0"));

        assertThat(names(find(1, Demand.NONE).all())).contains("Itea virginica 'Rose'");
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
