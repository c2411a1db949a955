package org.benchleaf.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.name;
import static org.benchleaf.search.Plants.plant;
import static org.benchleaf.search.Plants.stock;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.need.EnglishWords;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NeedSearchTest {
    private static final Wish FORTY = new Wish.InStock(40, StockSize.read("#3").toOptional(), Optional.empty());
    private static final Wish SHADE = new Wish.GrowsIn(Exposure.FULL_SHADE);
    private static final Wish LOW = new Wish.NoTallerThan(150);
    private static final Wish ZONE_6 = new Wish.HardyIn(HardinessZone.of(6, 'a'));

    @TempDir
    Path folder;

    private final InMemoryCatalogView catalog = new InMemoryCatalogView();
    private PlantIndex index;

    @BeforeEach
    void aSmallShop() {
        put(1, "Itea", "virginica", "full sun; full shade", "90-150 cm", "5-9", "shrub");
        put(2, "Leucothoe", "fontanesiana", "part shade; full shade", "90-180 cm", "5-8", "shrub");
        put(3, "Acer", "rubrum", "full sun", "1200-1800 cm", "3-9", "tree");
        put(4, "Gardenia", "jasminoides", "part shade", "90-150 cm", "8-10", "shrub");
        catalog.put(stock(1, "#3, 60"));
        catalog.put(stock(2, "#3, 45"));
        index = PlantIndex.open(folder, catalog);
    }

    @AfterEach
    void close() {
        index.close();
    }

    private void put(int serial, String genus, String species, String light, String height, String zones, String form) {
        catalog.put(plant(
                serial,
                name(genus, species),
                facts("exposure", light, "height", height, "hardiness", zones, "life_form", form)));
    }

    private NeedAnswer answer(Wish... wishes) {
        return new NeedSearch(catalog, index).answer(NeedQuery.of(Need.of(wishes), NOW));
    }

    private static List<Integer> serials(NeedAnswer answer) {
        return answer.matches().stream()
                .map(match -> List.of(1, 2, 3, 4).stream()
                        .filter(serial ->
                                PlantKey.ofSerial(serial).equals(match.plant().key()))
                        .findFirst()
                        .orElse(0))
                .toList();
    }

    @Test
    void leavesOutWhatMissesAFixedWishAndRanksTheRest() {
        NeedAnswer answer = answer(ZONE_6, SHADE, LOW, FORTY);

        assertThat(serials(answer)).containsExactly(1, 2, 3);
        assertThat(answer.total()).isEqualTo(3);
        assertThat(answer.meetAll()).isEqualTo(1);
        assertThat(answer.matches().getFirst().fit().meetsAll()).isTrue();
        assertThat(answer.facets().get(Facet.KIND)).containsExactly(new FacetCount("shrub", 1));
    }

    @Test
    void neverOffersWhatSoldOutAfterIndexing() {
        catalog.put(stock(1, "#3, 0"));

        NeedAnswer answer = answer(SHADE, FORTY);

        assertThat(serials(answer)).startsWith(2, 1);
        assertThat(answer.matches().getFirst().fit().meetsAll()).isTrue();
        assertThat(answer.matches().get(1).fit().meetsAll()).isFalse();
    }

    @Test
    void leavesOutWhatWasRetiredAfterIndexing() {
        catalog.retire(PlantKey.ofSerial(1));

        assertThat(serials(answer(SHADE))).doesNotContain(1).hasSize(3);
    }

    @Test
    void tellsWhichWishToGiveUpForHowManyMore() {
        NeedAnswer answer = answer(ZONE_6, SHADE, LOW);

        assertThat(answer.relaxations()).containsExactly(new Relaxation(List.of(LOW), 1));
    }

    @Test
    void tellsWhichPairToGiveUpWhenNoSingleWishBringsAny() {
        Wish fragrant = new Wish.Fragrant();
        NeedAnswer answer = answer(new Wish.OfGenus("Acer"), SHADE, LOW, FORTY, fragrant);

        assertThat(answer.relaxations()).isEmpty();
        assertThat(answer(new Wish.OfGenus("Acer"), SHADE, LOW).relaxations())
                .containsExactly(new Relaxation(List.of(SHADE, LOW), 1));
    }

    @Test
    void searchesOnlyPlantsWhoseNamesHoldTheWords() {
        NeedSearch search = new NeedSearch(catalog, index);

        NeedAnswer answer = search.answer(new NeedQuery(Need.of(SHADE), "leucoth", NOW, 0, 20));

        assertThat(serials(answer)).containsExactly(2);
        assertThat(answer.total()).isEqualTo(1);
    }

    @Test
    void answersASentence() {
        NeedReading reading =
                new NeedReader(EnglishWords.read()).read("red stems in winter, zone 5", LocalDate.of(2026, 11, 25));
        NeedAnswer sentence = new NeedSearch(catalog, index).answer(NeedQuery.of(reading.need(), NOW));
        assertThat(sentence.matches()).isNotEmpty();
        assertThat(sentence.matches().getFirst().fit().reasons()).hasSize(2);
    }

    @Test
    void findsWhatCameInThoughNobodySaidThatItChanged() {
        NeedSearch search = new NeedSearch(catalog, index);
        NeedQuery query = NeedQuery.of(Need.of(new Wish.InStock(70, Optional.empty(), Optional.empty())), NOW);
        assertThat(search.answer(query).meetAll()).isZero();
        catalog.put(stock(3, "#7, 80"));
        long until = System.nanoTime() + 30_000_000_000L; // a test that waits this long has failed
        while (search.answer(query).meetAll() == 0 && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        assertThat(search.answer(query).meetAll()).isEqualTo(1);
    }

    @Test
    void tellsWhyAPlantIsAnAnswerAndWhyItIsNone() {
        NeedSearch search = new NeedSearch(catalog, index);
        NeedQuery query = NeedQuery.of(Need.of(SHADE), NOW);
        List<Integer> places = List.of(1, 2, 3, 4).stream()
                .map(serial -> search.why(query, PlantKey.ofSerial(serial))
                        .orElseThrow()
                        .place()
                        .orElseThrow())
                .toList();
        assertThat(places).containsExactlyInAnyOrder(1, 2, 3, 4);
        Need without = Need.of(new Wish.NotOfGenus("Itea"));
        Why why = search.why(NeedQuery.of(without, NOW), PlantKey.ofSerial(1)).orElseThrow();
        assertThat(why.place()).isEmpty();
        assertThat(why.keptOutBy(without)).hasSize(1);
        assertThat(search.why(query, PlantKey.ofSerial(999))).isEmpty();
    }

    @Test
    void answersAnEmptyCatalogAndAnEmptyNeed() {
        assertThat(serials(answer())).containsExactly(1, 2, 3, 4);
        InMemoryCatalogView empty = new InMemoryCatalogView();
        try (PlantIndex none = PlantIndex.open(folder.resolve("none"), empty)) {
            assertThat(new NeedSearch(empty, none)
                            .answer(NeedQuery.of(Need.of(SHADE), NOW).counting(Set.of())))
                    .isEqualTo(new NeedAnswer(empty.revision(), 0, 0, 0, List.of(), List.of(), List.of(), Map.of()));
        }
    }

    @Test
    void refusesMoreWishesThanItCanHold() {
        Need need = new Need(Collections.nCopies(32, WeighedWish.of(SHADE)));
        assertThatThrownBy(() -> NeedQuery.of(need, NOW))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a need holds at most 31 wishes; got 32");
        Need most = new Need(Collections.nCopies(31, new WeighedWish(SHADE, 10, true)));
        assertThat(new NeedSearch(catalog, index)
                        .answer(NeedQuery.of(most, NOW))
                        .meetAll())
                .isEqualTo(2);
    }
}
