package org.benchleaf.bench.eval;

import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;

/// A row of a published list: a genus, a species or a cultivar. A genus stands for all its species, a species
/// for all below it.
///
/// @param text as the list has it
/// @param name as read
record Taxon(String text, BotanicalName name) {
    static Optional<Taxon> of(String text) {
        return NameReader.read(text).known().map(name -> new Taxon(text, name));
    }

    /// Whether a plant is of this taxon, by its accepted name or by a synonym.
    boolean holds(PlantRecord plant, PlantNames names) {
        return names.of(plant).stream().anyMatch(this::holds);
    }

    private boolean holds(BotanicalName other) {
        return name.genus().equals(other.genus())
                && (name.species().isEmpty() || epithet(name).equals(epithet(other)))
                && (name.cultivar().isEmpty() || name.cultivar().equals(other.cultivar()));
    }

    private static String epithet(BotanicalName name) {
        return name.species().map(Epithet::text).orElse("");
    }

    /// The species of a plant, or its genus and cultivar where no species is named: what is counted once.
    static String speciesOf(PlantRecord plant) {
        BotanicalName name = plant.name();
        return name.species().isPresent() ? name.genus() + " " + epithet(name) : name.toString();
    }
}
