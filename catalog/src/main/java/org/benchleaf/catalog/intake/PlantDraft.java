package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What a row says of a plant.
///
/// @param place the row
/// @param key the plant it names by key; empty when the name alone says which plant it is, or the plant is new
/// @param name its accepted name as the row gives it
/// @param commonNames in living languages
/// @param synonyms other botanical names
/// @param facts the facts it states, each with its source
/// @param rank how much its facts and names count; empty for as much as the file's
public record PlantDraft(
        Place place,
        Optional<PlantKey> key,
        BotanicalName name,
        List<CommonName> commonNames,
        List<Synonym> synonyms,
        List<Fact<?>> facts,
        Optional<ImportPlan.Rank> rank) {
    public PlantDraft {
        commonNames = List.copyOf(commonNames);
        synonyms = List.copyOf(synonyms);
        facts = List.copyOf(facts);
    }

    /// Counts as much as its file.
    public PlantDraft(
            Place place,
            Optional<PlantKey> key,
            BotanicalName name,
            List<CommonName> commonNames,
            List<Synonym> synonyms,
            List<Fact<?>> facts) {
        this(place, key, name, commonNames, synonyms, facts, Optional.empty());
    }
}
