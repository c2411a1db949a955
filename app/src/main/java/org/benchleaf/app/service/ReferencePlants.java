package org.benchleaf.app.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.OlderNames.OlderName;
import org.benchleaf.catalog.rules.SaleRuleBook;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Plants that are known and not grown: those that come with the program, and the shop's own in `reference.csv` of
/// its workspace, in the catalog's own format. They are asked for and replaced, never sold.
public final class ReferencePlants {
    /// Stands for "not in the catalog".
    private static final PlantKey NO_KEY = PlantKey.ofSerial(0);

    private final List<PlantDraft> plants;

    private ReferencePlants(List<PlantDraft> plants) {
        this.plants = List.copyOf(plants);
    }

    /// @param own the shop's own file; it need not be there, and comes first
    public static ReferencePlants read(Path own) {
        List<PlantDraft> plants = new ArrayList<>();
        try {
            if (Files.isRegularFile(own)) {
                plants.addAll(drafts(String.valueOf(own.getFileName()), Files.readAllBytes(own)));
            }
            for (String file : DemoCatalog.referenceFiles()) {
                try (InputStream content = DemoCatalog.open(file)) {
                    plants.addAll(drafts(file, content.readAllBytes()));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return new ReferencePlants(plants);
    }

    private static List<PlantDraft> drafts(String file, byte[] content) {
        try (Sheet sheet = SheetReader.open(file, content)) {
            return ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), new NoPlants())
                    .plants();
        }
    }

    /// The plant that is called so: by its botanical name, an older one, or a common one, in this order.
    ///
    /// @param rules what is said of selling it
    public Optional<PlantRecord> find(String typed, SaleRuleBook rules) {
        String wanted = fold(typed);
        return Stream.<java.util.function.Function<PlantDraft, Stream<String>>>of(
                        plant -> Stream.of(plant.name().toString()),
                        plant -> plant.synonyms().stream().map(Synonym::text),
                        plant -> plant.commonNames().stream().map(CommonName::text))
                .flatMap(names -> plants.stream()
                        .filter(plant ->
                                names.apply(plant).anyMatch(name -> fold(name).equals(wanted))))
                .findFirst()
                .map(plant -> record(plant, rules));
    }

    /// The first plant of a genus: it stands for all of them.
    public Optional<PlantRecord> ofGenus(String genus, SaleRuleBook rules) {
        return plants.stream()
                .filter(plant -> plant.name().genus().equalsIgnoreCase(genus.strip()))
                .findFirst()
                .map(plant -> record(plant, rules));
    }

    /// The plants of which a common name ends so: `ash` is white ash, green ash and mountain ash. Those of the genus
    /// that has most of them come first.
    public List<PlantRecord> endingSo(String typed, SaleRuleBook rules) {
        String wanted = fold(typed);
        List<PlantDraft> found = plants.stream()
                .filter(plant -> plant.commonNames().stream()
                        .anyMatch(name -> fold(name.text()).endsWith(" " + wanted)))
                .toList();
        return found.stream()
                .sorted(Comparator.comparing((PlantDraft plant) -> -found.stream()
                        .filter(other ->
                                other.name().genus().equals(plant.name().genus()))
                        .count()))
                .map(plant -> record(plant, rules))
                .toList();
    }

    /// Their botanical names, the older ones too, and their genera.
    public Stream<String> botanicalNames() {
        return plants.stream()
                .flatMap(plant -> Stream.concat(
                        Stream.of(plant.name().toString(), plant.name().genus()),
                        plant.synonyms().stream().map(Synonym::text)));
    }

    public Stream<String> commonNames() {
        return plants.stream().flatMap(plant -> plant.commonNames().stream()).map(CommonName::text);
    }

    /// All their genera.
    public Set<String> genera() {
        return plants.stream().map(plant -> plant.name().genus()).collect(Collectors.toSet());
    }

    /// Their synonyms, as older names of each.
    public List<OlderName> olderNames() {
        return plants.stream()
                .flatMap(plant -> plant.synonyms().stream()
                        .flatMap(synonym -> NameReader.read(synonym.text()).known().stream()
                                .map(older -> new OlderName(older, plant.name(), synonym.source()))))
                .toList();
    }

    /// A plant of which nothing is known but its name and what is said of selling it.
    ///
    /// @param species what is known of its species; none when it is not known either
    static PlantRecord named(BotanicalName name, Facts species, SaleRuleBook rules) {
        return notGrown(name, List.of(), List.of(), Facts.NONE.inheriting(species), rules);
    }

    /// Whether a plant is one of these and not in the catalog.
    public static boolean isReference(PlantRecord plant) {
        return plant.key().equals(NO_KEY);
    }

    /// A cultivar takes over what its species states and it does not.
    private PlantRecord record(PlantDraft plant, SaleRuleBook rules) {
        Facts own = Facts.of(plant.facts());
        Facts facts = plant.name()
                .taxonAbove()
                .flatMap(above -> plants.stream()
                        .filter(other -> other.name().equals(above))
                        .findFirst())
                .map(above -> own.inheriting(Facts.of(above.facts())))
                .orElse(own);
        return notGrown(plant.name(), plant.commonNames(), plant.synonyms(), facts, rules);
    }

    private static PlantRecord notGrown(
            BotanicalName name, List<CommonName> commonNames, List<Synonym> synonyms, Facts facts, SaleRuleBook rules) {
        Facts judged = rules.of(name, synonyms.stream().map(Synonym::text).toList())
                .map(said -> facts.and(new Fact<>(
                        Attributes.SALE_RULES, said, new org.benchleaf.shared.fact.Source("sale rules"), false)))
                .orElse(facts);
        return new PlantRecord(NO_KEY, name, Optional.empty(), commonNames, synonyms, judged, List.of(), false);
    }

    private static String fold(String name) {
        return name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[×'‘’\"-]", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /// A catalog in which nothing is.
    private record NoPlants() implements NameBook {
        @Override
        public Optional<PlantKey> byName(BotanicalName name) {
            return Optional.empty();
        }

        @Override
        public Optional<PlantKey> bySynonym(String name) {
            return Optional.empty();
        }

        @Override
        public Optional<PlantRecord> byKey(PlantKey key) {
            return Optional.empty();
        }

        @Override
        public boolean hasLot(String lot) {
            return false;
        }

        @Override
        public CatalogRevision revision() {
            return new CatalogRevision(0);
        }
    }
}
