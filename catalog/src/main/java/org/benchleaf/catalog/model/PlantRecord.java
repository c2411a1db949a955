package org.benchleaf.catalog.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// One plant of the catalog, with the facts that hold for it.
///
/// @param key its permanent key
/// @param name its accepted name
/// @param taxon the plant whose facts it inherits
/// @param commonNames the most usual first within a language
/// @param synonyms other botanical names
/// @param facts the chosen facts, own and inherited
/// @param otherFacts facts stated by sources that were not chosen
/// @param retired no longer grown; its page stays
public record PlantRecord(
        PlantKey key,
        BotanicalName name,
        Optional<PlantKey> taxon,
        List<CommonName> commonNames,
        List<Synonym> synonyms,
        Facts facts,
        List<Fact<?>> otherFacts,
        boolean retired) {
    public PlantRecord {
        commonNames = List.copyOf(commonNames);
        synonyms = List.copyOf(synonyms);
        otherFacts = List.copyOf(otherFacts);
    }

    /// The most usual common name in a language.
    public Optional<String> commonName(Locale language) {
        return commonNames.stream()
                .filter(name -> name.language().getLanguage().equals(language.getLanguage()))
                .map(CommonName::text)
                .findFirst();
    }
}
