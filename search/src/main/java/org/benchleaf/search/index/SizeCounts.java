package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.fit.Occasion;

/// How many plants have enough of one item in each size, in time.
final class SizeCounts {
    private final StockColumns stock;
    private final int by;
    private final int asked;
    private final int[] plants;
    private final int[] lastSlot;

    SizeCounts(StockColumns stock, Occasion occasion) {
        this.stock = stock;
        this.by = StockColumns.week(occasion.by());
        this.asked = occasion.count();
        this.plants = new int[stock.sizes()];
        this.lastSlot = new int[plants.length];
        java.util.Arrays.fill(lastSlot, -1);
    }

    void count(int slot) {
        Lots lots = stock.lots();
        int sum = 0;
        int item = -1;
        for (int lot = stock.start(slot); lot < stock.end(slot); lot++) {
            if (lots.item()[lot] != item) {
                item = lots.item()[lot];
                sum = 0;
            }
            sum += lots.ready()[lot] <= by ? lots.count()[lot] : 0;
            int size = lots.size()[lot];
            // a plant with two forms of one size counts once
            if (sum >= asked && lastSlot[size] != slot) {
                lastSlot[size] = slot;
                plants[size]++;
            }
        }
    }

    /// Adds what another counted of other plants.
    void add(SizeCounts other) {
        for (int size = 0; size < Math.min(plants.length, other.plants.length); size++) {
            plants[size] += other.plants[size];
        }
    }

    List<FacetCount> counted() {
        List<FacetCount> counted = new ArrayList<>();
        for (int size = 0; size < plants.length; size++) {
            if (plants[size] > 0) {
                counted.add(new FacetCount(stock.size(size).toString(), plants[size]));
            }
        }
        counted.sort(Comparator.comparingInt(FacetCount::plants).reversed().thenComparing(FacetCount::value));
        return counted;
    }
}
