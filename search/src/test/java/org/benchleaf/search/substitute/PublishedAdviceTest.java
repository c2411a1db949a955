package org.benchleaf.search.substitute;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;

class PublishedAdviceTest {
    private static final Optional<Region> OHIO = Optional.of(new Region("US-OH"));
    private static final Publication FIRST = list("A garden", "first");
    private static final Publication SECOND = list("A garden", "second");
    private static final Publication OTHER = list("An agency", "other", OHIO.get());

    private final PublishedAdvice advice = PublishedAdvice.of(List.of(
            new Advised("Ligustrum", "Ilex glabra", FIRST),
            new Advised("Ligustrum", "Ilex glabra", SECOND),
            new Advised("Ligustrum", "Ilex", OTHER),
            new Advised("Ligustrum sinense", "Itea virginica", OTHER),
            new Advised("Lonicera", "Lindera benzoin", OTHER)));

    private static Publication list(String publisher, String title, Region... homes) {
        return new Publication(publisher, Set.of(homes), title, "n.d.", "https://example.org/" + title);
    }

    @Test
    void countsAPublisherOnceHoweverManyOfItsListsNameAPlantOrAllItsGenus() {
        Advice privet = advice.insteadOf(BotanicalName.ofSpecies("Ligustrum", "vulgare"), Optional.empty());

        assertThat(privet.wish().publishers()).isEqualTo(Map.of("Ilex glabra", 2, "Ilex", 1));
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

        assertThat(advice.insteadOf(cultivar, Optional.empty()).named())
                .containsOnlyKeys("Ilex glabra", "Ilex", "Itea virginica");
    }

    @Test
    void aBareGenusIsReplacedAsAllItsSpecies() {
        assertThat(advice.insteadOf(BotanicalName.ofGenus("Ligustrum"), Optional.empty())
                        .named())
                .containsOnlyKeys("Ilex glabra", "Ilex", "Itea virginica");
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
        Advice withOwn = advice.with(List.of(new Advised("Ligustrum", "Ilex", Publication.own("This shop"))))
                .insteadOf(privet, OHIO);

        assertThat(advice.insteadOf(privet, OHIO).ownWish()).isEmpty();
        assertThat(withOwn.ownWish().orElseThrow().publishersOf("Ilex", Optional.of("opaca")))
                .isEqualTo(1);
        assertThat(withOwn.ownWish().orElseThrow().publishersOf("Itea", Optional.of("virginica")))
                .isZero();
        assertThat(withOwn.publishersOf(BotanicalName.ofSpecies("Ilex", "glabra")))
                .containsExactly("This shop", "An agency", "A garden");
    }

    @Test
    void theListsThatComeWithTheProgramAreWholeAndNameTheirSources() {
        List<Advised> all = PublishedAdvice.builtIn().all();

        assertThat(all).allSatisfy(one -> {
            assertThat(one.original()).matches("[A-Z][a-z-]+( [a-z-]+)?");
            assertThat(one.instead()).matches("[A-Z][a-z-]+( [a-z-]+)?").isNotEqualTo(one.original());
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
                .contains("Itea virginica", "Vaccinium corymbosum");
    }
}
