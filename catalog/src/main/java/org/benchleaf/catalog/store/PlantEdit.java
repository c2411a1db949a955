package org.benchleaf.catalog.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What a plan does to one plant, gathered from all its rows; lives for one transaction.
final class PlantEdit {
    final int serial;
    final PlantKey key;
    /// As stored before; empty for a new plant.
    final Optional<BotanicalName> stored;
    /// The rows about it, in their order.
    final List<PlantDraft> drafts = new ArrayList<>();

    /// Whether the import that brought it was taken back; a row that names it brings it again, under its old key.
    final boolean withdrawn;

    BotanicalName name;

    PlantEdit(int serial, PlantKey key, Optional<BotanicalName> stored, BotanicalName name, boolean withdrawn) {
        this.withdrawn = withdrawn;
        this.serial = serial;
        this.key = key;
        this.stored = stored;
        this.name = name;
    }

    boolean isNew() {
        return stored.isEmpty();
    }

    /// Whether nothing of it was in the catalog before: all its rows come and go with it.
    boolean isFresh() {
        return isNew() || withdrawn;
    }

    /// The plain name it had and has no longer.
    Optional<String> formerName() {
        return stored.map(BotanicalName::toString).filter(old -> !old.equals(name.toString()));
    }

    /// Whether the name's columns must be written.
    boolean named() {
        return !stored.equals(Optional.of(name));
    }
}
