package org.benchleaf.search;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.Candidate;
import org.benchleaf.shared.code.PlantKey;

/// Plants with their stock as they were read last, given out again only while the catalog has not changed
/// since: its revision is asked for every time, and what changed is read anew. One for all who answer from a catalog.
/// Safe for many threads.
public final class PlantsAtHand {
    /// So many are kept, those last shown: about 20 MB.
    private static final int MOST = 4096;

    private final CatalogView catalog;
    private final Map<PlantKey, Candidate> known = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<PlantKey, Candidate> eldest) {
            return size() > MOST;
        }
    };
    private CatalogRevision revision = new CatalogRevision(0);
    /// Holds that ended by then are counted as free in what is kept.
    private Instant asOf;

    public PlantsAtHand(CatalogView catalog) {
        this.catalog = catalog;
        this.asOf = catalog.now();
    }

    /// These plants as of now, those that exist; in the order asked.
    public List<Candidate> read(Collection<PlantKey> keys) {
        CatalogRevision now = catalog.revision();
        Map<PlantKey, Candidate> found = new HashMap<>();
        List<PlantKey> missing = new ArrayList<>();
        synchronized (this) {
            catchUp(now);
            for (PlantKey key : keys) {
                Candidate one = known.get(key);
                if (one == null) {
                    missing.add(key);
                } else {
                    found.put(key, one);
                }
            }
        }
        if (!missing.isEmpty()) {
            Map<PlantKey, Candidate> fresh = readNow(missing);
            found.putAll(fresh);
            keep(fresh, now);
        }
        return keys.stream().flatMap(key -> Stream.ofNullable(found.get(key))).toList();
    }

    private void catchUp(CatalogRevision now) {
        if (now.compareTo(revision) > 0) {
            if (!known.isEmpty()) {
                catalog.changesSince(revision).forEach(change -> known.remove(change.plant()));
            }
            revision = now;
        }
        CatalogView.Freed freed = catalog.freedSince(asOf);
        freed.plants().forEach(known::remove);
        asOf = freed.asOf();
    }

    private Map<PlantKey, Candidate> readNow(List<PlantKey> keys) {
        Map<PlantKey, PlantStock> stocks = catalog.stock(keys);
        Map<PlantKey, Candidate> read = new HashMap<>();
        catalog.plants(keys)
                .forEach((key, plant) ->
                        read.put(key, new Candidate(plant, stocks.getOrDefault(key, PlantStock.none(key)))));
        return read;
    }

    /// Kept only when nothing changed while they were read: else nobody knows of which state they are.
    private void keep(Map<PlantKey, Candidate> fresh, CatalogRevision before) {
        if (catalog.revision().equals(before)) {
            synchronized (this) {
                if (revision.equals(before)) {
                    known.putAll(fresh);
                }
            }
        }
    }
}
