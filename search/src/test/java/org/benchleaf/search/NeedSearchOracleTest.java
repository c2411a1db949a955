package org.benchleaf.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.Fit;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The search against a plain loop of the judge over every plant: `-Dneeds=5000` asks more, `-Dseed=7` others.
class NeedSearchOracleTest {
    private static final int NEEDS = Integer.getInteger("needs", 300);
    private static final long SEED = Long.getLong("seed", 1);
    private static final int PLANTS = 400;

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

    private void assertSame(NeedSearch search, InMemoryCatalogView catalog, Need need) {
        NeedAnswer answer = search.answer(new NeedQuery(need, "", Plants.NOW, 0, 50));
        Map<PlantKey, PlantStock> stocks = new HashMap<>();
        catalog.forEachStock(stock -> stocks.put(stock.plant(), stock));
        List<Fit> fits = new ArrayList<>();
        catalog.forEachPlant(plant -> fits.add(
                judge.fit(need, plant, stocks.getOrDefault(plant.key(), PlantStock.none(plant.key())), Plants.NOW)));
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
