package org.benchleaf.catalog;

import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What an import must know of the catalog before it plans anything: which plants and lots are already there.
///
/// Names, synonyms and lots are those of one state, [#revision]; a plan made with them is applied to that state
/// only.
public interface NameBook {
    /// The plant whose accepted name is exactly this one.
    Optional<PlantKey> byName(BotanicalName name);

    /// The plant that has this text among its synonyms; case, accents, hybrid marks and the kind of quotes do not
    /// matter. Empty when two plants share the synonym: then nobody but a person can say which one is meant.
    Optional<PlantKey> bySynonym(String name);

    /// The plant with this key, as it is now.
    Optional<PlantRecord> byKey(PlantKey key);

    /// Whether the grower's lot number is already in the catalog.
    boolean hasLot(String lot);

    /// The state the book was opened at; the base of every plan made with it.
    CatalogRevision revision();
}
