package org.benchleaf.search.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Plants;
import org.benchleaf.search.RandomWorld;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.shared.need.Need;
import org.junit.jupiter.api.Test;

class StockColumnsTest {
    private static final int NOW = StockColumns.week(Plants.NOW);

    @Test
    void keepsTheLatestOfManyChangesAndThePastAsItWas() {
        RandomWorld world = new RandomWorld(2);
        Random random = new Random(2);
        List<PlantStock> stocks = new ArrayList<>();
        StockColumns columns = StockColumns.empty();
        for (int slot = 0; slot < 100; slot++) {
            stocks.add(world.stock(slot));
            columns = columns.with(slot + 1, List.of(new StockColumns.Slot(slot, stocks.get(slot))));
        }
        StockColumns past = columns;
        byte[] pastStandings = past.standings(NOW).clone();
        for (int change = 0; change < 3000; change++) {
            int slot = random.nextInt(100);
            stocks.set(slot, world.stock(slot));
            columns = columns.with(100, List.of(new StockColumns.Slot(slot, stocks.get(slot))));
        }

        assertThat(columns.standings(NOW)).isEqualTo(expected(stocks));
        assertThat(past.standings(NOW + 1)).hasSameSizeAs(pastStandings);
        assertThat(past.standings(NOW)).isEqualTo(pastStandings);
    }

    private static byte[] expected(List<PlantStock> stocks) {
        byte[] standings = new byte[stocks.size()];
        for (int slot = 0; slot < standings.length; slot++) {
            var plant = Plants.plant(slot, Plants.name("Itea", "virginica"), Plants.facts());
            var fit = new FitJudge().fit(Need.of(), plant, stocks.get(slot), Plants.NOW);
            standings[slot] = (byte) (2 - fit.standing().ordinal());
        }
        return standings;
    }
}
