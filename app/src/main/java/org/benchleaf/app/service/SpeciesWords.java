package org.benchleaf.app.service;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.name.BotanicalName;

/// What a customer may call a species: its Latin name, with and without the hybrid mark, and its common names of two
/// words or more; single words mean a genus.
public final class SpeciesWords {
    private SpeciesWords() {}

    /// Names of the species of a plant, in lower case, each with genus and epithet; none for what has no species.
    public static Map<String, String> of(PlantRecord plant) {
        Map<String, String> words = new HashMap<>();
        BotanicalName name = plant.name();
        name.species().ifPresent(epithet -> {
            String species = name.genus() + " " + epithet.text();
            words.put(species.toLowerCase(Locale.ROOT).replace('-', ' '), species);
            words.put((name.genus() + " x " + epithet.text()).toLowerCase(Locale.ROOT), species);
            if (name.taxonAbove().isEmpty()) {
                plant.commonNames().stream()
                        .map(common -> common.text()
                                .toLowerCase(Locale.ROOT)
                                .replace('-', ' ')
                                .replace('’', '\''))
                        .filter(common -> common.contains(" "))
                        .forEach(common -> words.put(common, species));
            }
        });
        return words;
    }
}
