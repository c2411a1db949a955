package org.benchleaf.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.fit.Fit;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The search against a plain loop of the judge over every plant: `-Dneeds=5000` asks more, `-Dseed=7` others.
class NeedSearchOracleTest {
    private static final int NEEDS = Integer.getInteger("needs", 300);
    private static final long SEED = Long.getLong("seed", 1);
    private static final int PLANTS = 400;
    private static final int WORLDS = Integer.getInteger("worlds", 100);

    private final FitJudge judge = new FitJudge();

    @TempDir
    Path folder;

    @Test
    void answersAsJudgingEveryPlantWould() {
        InMemoryCatalogView catalog = new RandomWorld(SEED).catalog(PLANTS);
        RandomNeeds needs = new RandomNeeds(SEED);
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NeedSearch search = new NeedSearch(catalog, index);
            for (int i = 0; i < NEEDS; i++) {
                assertSame(search, catalog, needs.need());
            }
        }
    }

    @Test
    void answersAsJudgingEveryPlantWouldAfterPlantsAndStockChanged() {
        RandomWorld world = new RandomWorld(SEED + 1);
        InMemoryCatalogView catalog = world.catalog(PLANTS);
        RandomNeeds needs = new RandomNeeds(SEED + 1);
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NeedSearch search = new NeedSearch(catalog, index);
            for (int round = 0; round < 20; round++) {
                for (long serial = round; serial < PLANTS + round; serial += 37) {
                    catalog.put(world.plant(serial));
                    catalog.put(world.stock(serial + 5));
                }
                catalog.retire(PlantKey.ofSerial(round * 3L));
                index.catchUp();
                for (int i = 0; i < NEEDS / 20; i++) {
                    assertSame(search, catalog, needs.need());
                }
            }
        }
    }

    @Test
    void givingUpAWishNeverLowersHowManyMeetAll() {
        InMemoryCatalogView catalog = new RandomWorld(SEED).catalog(PLANTS);
        RandomNeeds needs = new RandomNeeds(SEED + 2);
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NeedSearch search = new NeedSearch(catalog, index);
            for (int i = 0; i < NEEDS; i++) {
                Need need = needs.need();
                int meetAll = search.answer(NeedQuery.of(need, Plants.NOW)).meetAll();
                for (int without = 0; without < need.wishes().size(); without++) {
                    List<WeighedWish> fewer = new ArrayList<>(need.wishes());
                    fewer.remove(without);
                    assertThat(search.answer(NeedQuery.of(new Need(fewer), Plants.NOW))
                                    .meetAll())
                            .as("%s without %d", need, without)
                            .isGreaterThanOrEqualTo(meetAll);
                }
            }
        }
    }

    /// A price is judged in the size asked for, so giving up the size changes what it is judged by: left out
    /// here.
    @Test
    void givingUpAWishBringsWhatWasSaid() {
        InMemoryCatalogView catalog = new RandomWorld(SEED).catalog(PLANTS);
        RandomNeeds needs = new RandomNeeds(SEED + 4);
        int tried = 0;
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NeedSearch search = new NeedSearch(catalog, index);
            for (int i = 0; i < NEEDS; i++) {
                Need need = needs.need();
                boolean priced = need.wishes().stream().anyMatch(one -> one.wish() instanceof Wish.AtMostPrice);
                NeedAnswer answer = search.answer(NeedQuery.of(need, Plants.NOW));
                for (Relaxation relaxation : answer.relaxations()) {
                    if (!priced) {
                        tried++;
                        Need rest = new Need(need.wishes().stream()
                                .filter(one -> !relaxation.giveUp().contains(one.wish()))
                                .toList());
                        assertThat(search.answer(NeedQuery.of(rest, Plants.NOW)).meetAll())
                                .as("%s %s", need, relaxation)
                                .isEqualTo(answer.meetAll() + relaxation.more());
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(50);
    }

    @Test
    void pagesAreOneListCutInPieces() {
        InMemoryCatalogView catalog = new RandomWorld(SEED).catalog(PLANTS);
        RandomNeeds needs = new RandomNeeds(SEED + 3);
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NeedSearch search = new NeedSearch(catalog, index);
            for (int i = 0; i < 30; i++) {
                Need need = needs.need();
                List<Match> whole = search.answer(new NeedQuery(need, "", Plants.NOW, 0, 60))
                        .matches();
                List<Match> pieces = new ArrayList<>();
                for (int skip = 0; skip < 60; skip += 7) {
                    int limit = Math.min(7, 60 - skip);
                    pieces.addAll(search.answer(new NeedQuery(need, "", Plants.NOW, skip, limit))
                            .matches());
                }
                assertThat(pieces).isEqualTo(whole);
            }
        }
    }

    /// Many small catalogs, each with a few needs: 2,000 pairs of both, all facets counted.
    @Test
    void answersAsJudgingEveryPlantWouldInManyCatalogs() throws IOException {
        for (int world = 0; world < WORLDS; world++) {
            InMemoryCatalogView catalog = new RandomWorld(SEED + 100 + world).catalog(10 + world % 50);
            RandomNeeds needs = new RandomNeeds(SEED + 100 + world);
            try (PlantIndex index = PlantIndex.open(Files.createTempDirectory(folder, "world"), catalog)) {
                NeedSearch search = new NeedSearch(catalog, index);
                for (int i = 0; i < 20; i++) {
                    assertSame(search, catalog, needs.need());
                }
            }
        }
    }

    private void assertFacets(NeedAnswer answer, List<PlantRecord> plants, List<PlantStock> stocks, Need need) {
        Occasion occasion = Occasion.of(need, Plants.NOW);
        for (Facet facet : Facet.values()) {
            Need others = new Need(need.wishes().stream()
                    .filter(weighed -> !facet.isAbout(weighed.wish()))
                    .toList());
            Map<String, Integer> expected = new HashMap<>();
            for (int i = 0; i < plants.size(); i++) {
                PlantRecord plant = plants.get(i);
                PlantStock stock = stocks.get(i);
                // the price is judged in the size asked for, which setting the size aside does not change
                boolean clean = others.wishes().stream()
                        .map(weighed -> judge.judge(weighed.wish(), plant.facts(), plant.name(), stock, occasion))
                        .noneMatch(Reason.Missed.class::isInstance);
                if (clean) {
                    wishes(facet, stock, occasion).forEach((value, wish) -> {
                        Reason reason = judge.judge(wish, plant.facts(), plant.name(), stock, occasion);
                        if (reason instanceof Reason.Met) {
                            expected.merge(value, 1, Integer::sum);
                        }
                    });
                }
            }
            Map<String, Integer> counted = new HashMap<>();
            answer.facets().getOrDefault(facet, List.of()).forEach(count -> counted.put(count.value(), count.plants()));
            assertThat(counted).as("%s of %s", facet, need).isEqualTo(expected);
        }
    }

    private static Map<String, Wish> wishes(Facet facet, PlantStock stock, Occasion occasion) {
        if (facet != Facet.SIZE) {
            return facet.choices();
        }
        Map<String, Wish> sizes = new HashMap<>();
        stock.items()
                .forEach(item -> sizes.put(
                        item.size().toString(),
                        new Wish.InStock(occasion.count(), Optional.of(item.size()), Optional.of(occasion.by()))));
        return sizes;
    }

    private void assertLoosenings(NeedAnswer answer, List<PlantRecord> plants, List<PlantStock> stocks, Need need) {
        for (Loosening loosening : answer.loosenings()) {
            Need looser = new Need(need.wishes().stream()
                    .map(weighed -> weighed.wish().equals(loosening.wish())
                            ? new WeighedWish(
                                    loosening.loosened(), weighed.weight(), weighed.fixed(), weighed.counting())
                            : weighed)
                    .toList());
            int meetAll = 0;
            for (int i = 0; i < plants.size(); i++) {
                Fit fit = judge.fit(looser, plants.get(i), stocks.get(i), Plants.NOW);
                meetAll += fit.answers() && fit.meetsAll() ? 1 : 0;
            }
            assertThat(meetAll - answer.meetAll()).as("%s %s", need, loosening).isEqualTo(loosening.more());
        }
    }

    private void assertSame(NeedSearch search, InMemoryCatalogView catalog, Need need) {
        NeedAnswer answer = search.answer(new NeedQuery(need, "", Plants.NOW, 0, 50).counting(Set.of(Facet.values())));
        Map<PlantKey, PlantStock> stocks = new HashMap<>();
        catalog.forEachStock(stock -> stocks.put(stock.plant(), stock));
        List<Fit> fits = new ArrayList<>();
        catalog.forEachPlant(plant -> fits.add(
                judge.fit(need, plant, stocks.getOrDefault(plant.key(), PlantStock.none(plant.key())), Plants.NOW)));
        List<PlantRecord> plants = new ArrayList<>();
        catalog.forEachPlant(plants::add);
        List<PlantStock> theirs = plants.stream()
                .map(plant -> stocks.getOrDefault(plant.key(), PlantStock.none(plant.key())))
                .toList();
        assertFacets(answer, plants, theirs, need);
        assertLoosenings(answer, plants, theirs, need);
        List<Fit> answers = new ArrayList<>(fits.stream().filter(Fit::answers).toList());
        Collections.sort(answers);
        assertThat(answer.matches().stream().map(Match::fit))
                .as("%s", need)
                .isEqualTo(answers.subList(0, Math.min(50, answers.size())));
        assertThat(answer.total()).isEqualTo(answers.size());
        assertThat(answer.meetAll())
                .isEqualTo((int) answers.stream().filter(Fit::meetsAll).count());
        assertThat(answer.missNone()).isEqualTo((int) answers.stream()
                .filter(fit -> !fit.meetsAll() && missed(fit) == 0)
                .count());
        for (Relaxation relaxation : answer.relaxations()) {
            assertThat(relaxation.more()).as("%s %s", need, relaxation).isEqualTo((int) answers.stream()
                    .filter(fit -> !fit.meetsAll())
                    .filter(fit -> fit.reasons().stream()
                            .filter(reason -> !(reason instanceof Reason.Met))
                            .allMatch(reason -> relaxation.giveUp().contains(reason.wish())))
                    .count());
        }
    }

    private static long missed(Fit fit) {
        return fit.reasons().stream().filter(Reason.Missed.class::isInstance).count();
    }
}
