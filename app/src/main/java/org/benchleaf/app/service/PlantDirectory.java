package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.shared.code.PlantKey;

/// The keys of every plant that is grown, in their order. Kept until a plant changes; stock may change as it likes.
public final class PlantDirectory {
    private final CatalogView catalog;
    private State last = new State(new CatalogRevision(-1), List.of());

    public PlantDirectory(CatalogView catalog) {
        this.catalog = catalog;
    }

    private record State(CatalogRevision revision, List<PlantKey> keys) {}

    public synchronized List<PlantKey> keys() {
        CatalogRevision now = catalog.revision();
        if (last.revision().number() < 0 || (!last.revision().equals(now) && plantsChanged())) {
            List<PlantKey> keys = new ArrayList<>();
            CatalogRevision read = catalog.forEachPlant(plant -> keys.add(plant.key()));
            keys.sort(Comparator.naturalOrder());
            last = new State(read, List.copyOf(keys));
        } else if (!last.revision().equals(now)) {
            last = new State(now, last.keys());
        }
        return last.keys();
    }

    private boolean plantsChanged() {
        return catalog.changesSince(last.revision()).stream()
                .anyMatch(change -> change.kind() == CatalogView.Change.Kind.PLANT);
    }
}
