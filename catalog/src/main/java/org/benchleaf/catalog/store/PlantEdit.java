package org.benchleaf.catalog.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What some rows of a plan do to one plant; lives as long as they are written.
final class PlantEdit {
    final int serial;
    final PlantKey key;
    final BotanicalName name;
    final Standing standing;
    /// The plain name that this plan took from it.
    final Optional<String> formerName;
    /// The rows about it, in their order.
    final List<PlantDraft> drafts = new ArrayList<>();

    /// Where it was before the plan.
    enum Standing {
        /// In the catalog.
        KNOWN,
        /// Not there; its row is to be made.
        NEW,
        /// Not there, and its row is made already, for the plan gives its key.
        MADE,
        /// The import that brought it was taken back; a row that names it brings it again, under its old key.
        WITHDRAWN
    }

    PlantEdit(int serial, PlantKey key, BotanicalName name, Standing standing, Optional<String> formerName) {
        this.serial = serial;
        this.key = key;
        this.name = name;
        this.standing = standing;
        this.formerName = formerName;
    }

    /// Whether nothing of it was in the catalog before: all its rows come and go with it.
    boolean isFresh() {
        return standing != Standing.KNOWN;
    }
}
