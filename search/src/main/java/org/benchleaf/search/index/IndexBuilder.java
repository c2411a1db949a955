package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.store.Directory;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;

/// Writes plants and stock of a catalog into index and columns.
record IndexBuilder(CatalogView catalog) {
    /// So many plants are read from the catalog at a time.
    private static final int BATCH = 500;

    /// Every plant of the catalog, committed.
    IndexFiles build(Directory directory) throws IOException {
        IndexFiles files = IndexFiles.create(directory);
        try {
            CatalogRevision revision;
            try (DocumentPipe pipe = new DocumentPipe(files.writer())) {
                revision = catalog.forEachPlant(pipe::add);
                pipe.finish();
            }
            files.commit(revision);
            return files;
        } catch (IOException | RuntimeException failed) {
            files.writer().rollback();
            directory.close();
            throw failed;
        }
    }

    /// Brings these plants up to date; those retired or gone leave the index.
    void update(IndexWriter writer, Collection<PlantKey> keys) throws IOException {
        for (List<PlantKey> batch : batches(keys)) {
            Map<PlantKey, PlantRecord> plants = catalog.plants(batch);
            for (PlantKey key : batch) {
                PlantRecord plant = plants.get(key);
                if (plant == null || plant.retired()) {
                    writer.deleteDocuments(PlantDocument.term(key));
                } else {
                    writer.updateDocument(PlantDocument.term(key), PlantDocument.of(plant));
                }
            }
        }
    }

    StockColumns update(StockColumns stock, KeySlots slots, Collection<PlantKey> keys) {
        List<StockColumns.Slot> changed = new ArrayList<>();
        for (List<PlantKey> batch : batches(keys)) {
            Map<PlantKey, PlantStock> now = catalog.stock(batch);
            for (PlantKey key : batch) {
                changed.add(slot(slots, now.getOrDefault(key, PlantStock.none(key))));
            }
        }
        return stock.with(slots.size(), changed);
    }

    private static StockColumns.Slot slot(KeySlots slots, PlantStock stock) {
        return new StockColumns.Slot(slots.slot(stock.plant().text()), stock);
    }

    private static List<List<PlantKey>> batches(Collection<PlantKey> keys) {
        List<PlantKey> all = List.copyOf(keys);
        List<List<PlantKey>> batches = new ArrayList<>();
        for (int from = 0; from < all.size(); from += BATCH) {
            batches.add(all.subList(from, Math.min(all.size(), from + BATCH)));
        }
        return batches;
    }
}
