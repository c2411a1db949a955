package org.benchleaf.search.substitute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Lists.advised;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.catalog.names.OlderNames;
import org.benchleaf.catalog.names.OlderNames.OlderName;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.junit.jupiter.api.Test;

class PublishedAdviceTest {
    private static final Optional<Region> OHIO = Optional.of(new Region("US-OH"));
    private static final TaxonName ILEX = new TaxonName("Ilex");
    private static final TaxonName ILEX_GLABRA = new TaxonName("Ilex glabra");
    private static final TaxonName ITEA = new TaxonName("Itea virginica");
    private static final Publication FIRST = list("A garden", "first");
    private static final Publication SECOND = list("A garden", "second");
    private static final Publication OTHER = list("An agency", "other", OHIO.get());

    private final PublishedAdvice advice = PublishedAdvice.of(List.of(
            advised("Ligustrum", "Ilex glabra", FIRST),
            advised("Ligustrum", "Ilex glabra", SECOND),
            advised("Ligustrum", "Ilex", OTHER),
            advised("Ligustrum sinense", "Itea virginica", OTHER),
            advised("Lonicera", "Lindera benzoin", OTHER)));

    private static Publication list(String publisher, String title, Region... homes) {
        return new Publication(publisher, Set.of(homes), title, "n.d.", "https://example.org/" + title);
    }

    @Test
    void countsAPublisherOnceHoweverManyOfItsListsNameAPlantOrAllItsGenus() {
        Advice privet = advice.insteadOf(BotanicalName.ofSpecies("Ligustrum", "vulgare"), Optional.empty());

        assertThat(privet.wish().publishers()).isEqualTo(Map.of(ILEX_GLABRA, 2, ILEX, 1));
        assertThat(privet.publishersOf(BotanicalName.ofSpecies("Ilex", "glabra")))
                .containsExactly("A garden", "An agency");
    }

    @Test
    void tellsFirstWhoIsOfThePlaceThatPlantsGoTo() {
        Advice privet = advice.insteadOf(BotanicalName.ofSpecies("Ligustrum", "vulgare"), OHIO);

        assertThat(privet.publishersOf(BotanicalName.ofSpecies("Ilex", "glabra")))
                .containsExactly("An agency", "A garden");
    }

    @Test
    void aSpeciesIsReplacedAsItselfAndAsOneOfItsGenusAndACultivarAsItsSpecies() {
        BotanicalName cultivar = BotanicalName.ofSpecies("Ligustrum", "sinense").withCultivar("Variegatum");

        assertThat(advice.insteadOf(cultivar, Optional.empty()).named()).containsOnlyKeys(ILEX_GLABRA, ILEX, ITEA);
    }

    @Test
    void aBareGenusIsReplacedAsAllItsSpecies() {
        assertThat(advice.insteadOf(BotanicalName.ofGenus("Ligustrum"), Optional.empty())
                        .named())
                .containsOnlyKeys(ILEX_GLABRA, ILEX, ITEA);
    }

    @Test
    void aVarietyThatIsNamedIsNotItsSpeciesAndASpeciesIsAllItsVarieties() {
        Advice instead = PublishedAdvice.of(List.of(
                        advised("Rosa multiflora", "Viburnum opulus var. americanum", FIRST),
                        advised("Rosa multiflora", "Cornus florida", OTHER)))
                .insteadOf(BotanicalName.ofSpecies("Rosa", "multiflora"), Optional.empty());

        // the European cranberrybush, and the American one
        assertThat(instead.publishersOf(BotanicalName.ofSpecies("Viburnum", "opulus")))
                .isEmpty();
        assertThat(instead.publishersOf(new TaxonName("Viburnum opulus var. americanum").asName()))
                .containsExactly("A garden");
        assertThat(instead.wish().publishersOf(new TaxonName("Cornus florida f. rubra").asName()))
                .isEqualTo(1);
    }

    @Test
    void aCatalogThatKeepsOlderNamesIsReached() {
        PublishedAdvice named = PublishedAdvice.of(List.of(advised("Reynoutria japonica", "Morella cerifera", FIRST)))
                .under(OlderNames.of(List.of(
                        older("Polygonum cuspidatum", "Reynoutria japonica"),
                        older("Myrica cerifera", "Morella cerifera"))));

        Advice knotweed = named.insteadOf(BotanicalName.ofSpecies("Polygonum", "cuspidatum"), Optional.empty());

        assertThat(knotweed.publishersOf(BotanicalName.ofSpecies("Myrica", "cerifera")))
                .containsExactly("A garden");
        assertThat(knotweed.publishersOf(BotanicalName.ofSpecies("Morella", "cerifera")))
                .containsExactly("A garden");
        assertThat(named.all()).hasSize(1);
    }

    private static OlderName older(String older, String accepted) {
        return new OlderName(
                new TaxonName(older).asName(), new TaxonName(accepted).asName(), new Source("from memory"));
    }

    @Test
    void tellsWhatAPlantIsNamedInsteadOfThatWhichMostSayFirst() {
        assertThat(PublishedAdvice.of(List.of(
                                advised("Nandina domestica", "Ilex glabra", FIRST),
                                advised("Nandina domestica", "Ilex glabra", SECOND),
                                advised("Ligustrum", "Ilex", OTHER),
                                advised("Ligustrum", "Ilex glabra", FIRST),
                                advised("Buxus", "Taxus", FIRST)))
                        .replacedBy(BotanicalName.ofSpecies("Ilex", "glabra").withCultivar("Shamrock"), OHIO))
                .containsExactly(
                        new Replaced(new TaxonName("Ligustrum"), List.of("An agency", "A garden")),
                        new Replaced(new TaxonName("Nandina domestica"), List.of("A garden")));
    }

    @Test
    void saysNothingOfWhatNoListIsHeadedBy() {
        assertThat(advice.insteadOf(BotanicalName.ofSpecies("Itea", "virginica"), Optional.empty())
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aShopsOwnWordIsAWishOfItsOwnAndIsToldFirst() {
        BotanicalName privet = BotanicalName.ofSpecies("Ligustrum", "vulgare");
        Advice withOwn = advice.with(List.of(advised("Ligustrum", "Ilex", Publication.own("This shop"))))
                .insteadOf(privet, OHIO);

        assertThat(advice.insteadOf(privet, OHIO).ownWish()).isEmpty();
        assertThat(withOwn.ownWish().orElseThrow().publishersOf(BotanicalName.ofSpecies("Ilex", "opaca")))
                .isEqualTo(1);
        assertThat(withOwn.ownWish().orElseThrow().publishersOf(BotanicalName.ofSpecies("Itea", "virginica")))
                .isZero();
        assertThat(withOwn.publishersOf(BotanicalName.ofSpecies("Ilex", "glabra")))
                .containsExactly("This shop", "An agency", "A garden");
    }

    @Test
    void theListsThatComeWithTheProgramAreWholeAndNameTheirSources() {
        List<Advised> all = PublishedAdvice.builtIn().all();

        assertThat(all).allSatisfy(one -> {
            assertThat(one.instead().species()).isNotEqualTo(one.original());
            assertThat(one.list().publisher()).isNotBlank();
            assertThat(one.list().title()).isNotBlank();
            assertThat(one.list().address()).startsWith("http");
        });
        assertThat(all).doesNotHaveDuplicates();
    }

    @Test
    void severalPublishersNameWhatIsPlantedInsteadOfBurningBush() {
        // Horticulture magazine, Alternatives to Invasives, and others read for instead.tsv
        Advice burningBush =
                PublishedAdvice.builtIn().insteadOf(BotanicalName.ofSpecies("Euonymus", "alatus"), Optional.empty());

        assertThat(burningBush.wish().publishers().entrySet().stream()
                        .filter(named -> named.getValue() >= 3)
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toSet()))
                .contains(ITEA, new TaxonName("Vaccinium corymbosum"));
    }
}
