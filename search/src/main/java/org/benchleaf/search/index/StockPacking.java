package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;

/// Packs the stock of a whole catalog as it is read, before it is known which slot each plant has.
final class StockPacking {
    private final StockColumns.Shared shared = new StockColumns.Shared(new Codes<>(), new Codes<>(), Lots.ofSize(1024));
    private final List<PlantKey> plants = new ArrayList<>();
    private Lots lots = shared.lots();
    private int[] ends = new int[1024];
    private CatalogRevision revision = new CatalogRevision(0);

    static StockPacking of(CatalogView catalog) {
        StockPacking packing = new StockPacking();
        packing.revision = catalog.forEachStock(packing::add);
        return packing;
    }

    private void add(PlantStock stock) {
        int start = plants.isEmpty() ? 0 : ends[plants.size() - 1];
        lots = lots.room(start + stock.items().size() + stock.lots().size());
        ends = plants.size() < ends.length ? ends : Arrays.copyOf(ends, ends.length * 2);
        ends[plants.size()] = shared.append(lots, start, stock);
        plants.add(stock.plant());
    }

    /// The state of the catalog that was read.
    CatalogRevision revision() {
        return revision;
    }

    /// The stock by slot.
    ///
    /// @param slots gives plants their slots, new ones too
    StockColumns columns(KeySlots slots) {
        int[] slotOf = new int[plants.size()];
        for (int plant = 0; plant < slotOf.length; plant++) {
            slotOf[plant] = slots.slot(plants.get(plant).text());
        }
        int[] starts = new int[slots.size()];
        int[] lengths = new int[slots.size()];
        for (int plant = 0; plant < slotOf.length; plant++) {
            int start = plant == 0 ? 0 : ends[plant - 1];
            starts[slotOf[plant]] = start;
            lengths[slotOf[plant]] = ends[plant] - start;
        }
        int used = slotOf.length == 0 ? 0 : ends[slotOf.length - 1];
        return new StockColumns(shared.with(lots), starts, lengths, used);
    }
}
