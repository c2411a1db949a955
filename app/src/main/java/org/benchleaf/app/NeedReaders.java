package org.benchleaf.app;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.service.SpeciesWords;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.content.ContentPack;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.search.need.Vocabulary;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.rule.Destination;

/// Makes readers of needs that know the plants of a catalog.
///
/// @param place where the shop is
/// @param postalZones the shop's table of zones by postal code; need not be there
record NeedReaders(CatalogView catalog, ContentPack content, Optional<Destination> place, Path postalZones) {
    /// Costs one pass over the plants: keep it.
    NeedReader reader(Locale language) {
        Set<String> genera = new HashSet<>();
        Map<String, String> species = new HashMap<>();
        catalog.forEachPlant(plant -> {
            genera.add(plant.name().genus());
            SpeciesWords.of(plant).forEach(species::putIfAbsent);
        });
        // a language whose words nobody wrote yet is asked in English
        String own = "words/need_" + language.getLanguage() + ".words";
        String key = content.find(own).isPresent() ? own : "words/need_en.words";
        Vocabulary words = Vocabulary.read(content.open(key));
        return new NeedReader(words.withGenera(genera).withSpecies(species), place, zones());
    }

    /// @throws Refusal when the table cannot be read
    PostalZones zones() {
        if (!Files.isRegularFile(postalZones)) {
            return PostalZones.NONE;
        }
        try (Reader table = Files.newBufferedReader(postalZones, StandardCharsets.UTF_8)) {
            return PostalZones.read(table);
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Refusal(Problem.of("zones.unreadable", postalZones.toString()));
        }
    }
}
