package org.benchleaf.app.service;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.WrittenName;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.search.names.NearestName;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.plant.Grown;

/// From what a person types to the plant that is to be replaced: in the catalog, or known and not grown.
///
/// A name of one is never taken for a misspelt name of another while some reference knows it as it was typed.
public final class OriginalFinder {
    private static final int CANDIDATES = 40;
    private static final int NAMED = 4;
    /// What people add to a name that has no such word.
    private static final Set<String> KINDS =
            Set.of("tree", "trees", "shrub", "shrubs", "bush", "bushes", "vine", "vines", "grass", "plant", "plants");

    private final CatalogView catalog;
    private final PlantFinder plants;
    private final Supplier<NameIndex> names;
    private final Supplier<ReferencePlants> references;
    private final Supplier<PublishedAdvice> advice;

    /// @param plants finds keys and what is misspelt
    /// @param references read only when the catalog does not have the name
    /// @param advice asked for names that even references do not have
    public OriginalFinder(
            CatalogView catalog,
            PlantFinder plants,
            Supplier<NameIndex> names,
            Supplier<ReferencePlants> references,
            Supplier<PublishedAdvice> advice) {
        this.advice = advice;
        this.catalog = catalog;
        this.plants = plants;
        this.names = names;
        this.references = references;
    }

    /// The plant meant.
    ///
    /// @param plant whether it is in the catalog or not
    /// @param others other plants that the same words may mean, a few; empty when they mean one
    /// @param wholeGenus whether a genus was named, so that no plant of it will do
    /// @param guessed whether it is not called as it was typed
    public record Found(PlantRecord plant, List<PlantRecord> others, boolean wholeGenus, boolean guessed) {
        public Found {
            others = List.copyOf(others);
        }

        Found(PlantRecord plant, List<PlantRecord> others, boolean wholeGenus) {
            this(plant, others, wholeGenus, false);
        }

        Found asGuess() {
            return new Found(plant, others, wholeGenus, true);
        }
    }

    /// @throws org.benchleaf.app.Refusal when nothing is known by that name, or a misspelt one fits several
    public Found find(String text) {
        String typed = text.strip();
        if (isKey(typed)) {
            return new Found(plants.find(typed), List.of(), false);
        }
        return known(typed)
                .or(() -> misspelt(typed).map(Found::asGuess))
                .or(() -> TypedName.cultivar(typed).flatMap(this::stranger))
                .orElseGet(() -> begun(typed).asGuess());
    }

    /// By words that are in its names, the last one perhaps unfinished.
    private Found begun(String typed) {
        boolean begun = hits(typed).stream().limit(1).anyMatch(hit -> hit.how() == NameMatch.PREFIX);
        if (!begun) {
            throw plants.unlike(typed);
        }
        return new Found(plants.find(typed), List.of(), false);
    }

    /// What is called so, grown here or not.
    private Optional<Found> known(String typed) {
        List<NameHit> hits = hits(typed);
        return sure(typed, hits)
                .or(() -> ofTaxon(typed, " ", hits))
                .or(() -> references
                        .get()
                        .ofGenus(typed, catalog.saleRules())
                        .map(plant -> new Found(plant, List.of(), true)))
                .or(() -> ofAKind(typed, hits))
                .or(() -> ofTaxon(typed, "", hits))
                .or(() -> mostlyOfOneGenus(hits))
                .or(() -> withoutKind(typed))
                .or(() -> onlyNamed(typed));
    }

    /// What is written a little otherwise, or sounds so, grown here or not.
    private Optional<Found> misspelt(String typed) {
        List<PlantRecord> grown = plants(hits(typed));
        Stream<String> names = Stream.concat(
                grown.stream()
                        .flatMap(plant -> Stream.concat(
                                Named.of(plant).names().stream().map(WrittenName::text),
                                Stream.of(plant.name().genus()))),
                references.get().botanicalNames());
        Stream<String> commonNames = Stream.concat(
                grown.stream().flatMap(plant -> plant.commonNames().stream()).map(CommonName::text),
                references.get().commonNames());
        return new NearestName(typed)
                .among(Stream.concat(names, commonNames.flatMap(name -> Stream.of(name, kind(name)))))
                .flatMap(this::known);
    }

    /// `azalea`, of a royal azalea.
    private static String kind(String commonName) {
        String last = commonName.substring(commonName.lastIndexOf(' ') + 1);
        return KINDS.contains(last) ? commonName : last;
    }

    /// What is not known here, by what is known of its species; where that is not known, as one of a genus that is
    /// grown.
    private Optional<Found> stranger(BotanicalName name) {
        Optional<Found> itself = name.isCultivated() ? Optional.empty() : sure(name.toString());
        return itself.or(() -> name.taxonAbove()
                .flatMap(species -> sure(species.toString()))
                .map(species -> species.plant().facts())
                .or(() -> isGrown(name.genus()) ? Optional.of(Facts.NONE) : Optional.empty())
                .map(facts -> named(name, facts, false)));
    }

    private boolean isGrown(String genus) {
        return plants(hits(genus)).stream()
                .anyMatch(plant -> plant.name().genus().equals(genus));
    }

    private Found named(BotanicalName name, Facts species, boolean wholeGenus) {
        return new Found(ReferencePlants.named(name, species, catalog.saleRules()), List.of(), wholeGenus);
    }

    /// What lists replace and nobody knows anything else of.
    private Optional<Found> onlyNamed(String typed) {
        return TypedName.whole(typed)
                .filter(name -> !name.isCultivated())
                .filter(name -> advice.get().replaces(TaxonName.of(name)))
                .map(name -> named(name, Facts.NONE, TypedName.isGenus(typed)));
    }

    private List<NameHit> hits(String typed) {
        return typed.isEmpty() ? List.of() : names.get().find(typed, CANDIDATES);
    }

    private Optional<Found> sure(String typed) {
        return sure(typed, hits(typed));
    }

    /// By a whole name, of the catalog before one of those that are not grown here.
    private Optional<Found> sure(String typed, List<NameHit> hits) {
        List<NameHit> sure = hits.stream()
                .filter(hit -> hit.how().compareTo(NameMatch.COMMON_NAME) <= 0)
                .toList();
        if (!sure.isEmpty()) {
            NameMatch best = sure.getFirst().how();
            return Optional.of(chosen(
                    plants(sure.stream().filter(hit -> hit.how() == best).toList()), TypedName.isGenus(typed)));
        }
        return references
                .get()
                .find(typed, catalog.saleRules())
                .map(plant -> new Found(plant, List.of(), TypedName.isGenus(typed)));
    }

    private static boolean isKey(String typed) {
        return PlantKey.read(typed).toOptional().isPresent()
                || ItemKey.read(typed).toOptional().isPresent();
    }

    /// What the words name a kind of: a Virginia rose is a rose, and a rose mallow is a mallow. The genus that half of
    /// the plants of that kind belong to or more, grown here or not, is meant.
    private Optional<Found> ofAKind(String typed, List<NameHit> hits) {
        List<PlantRecord> grown =
                plants(hits).stream().filter(plant -> isCalledA(typed, plant)).toList();
        List<PlantRecord> known = references.get().endingSo(typed, catalog.saleRules());
        List<PlantRecord> all = Stream.concat(grown.stream(), known.stream()).toList();
        return all.stream()
                .collect(
                        Collectors.groupingBy(plant -> plant.name().genus(), LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .filter(genus -> genus.getValue() * 2 >= all.size())
                .map(genus -> chosen(all, false, plant -> !plant.name().genus().equals(genus.getKey())));
    }

    private static boolean isCalledA(String kind, PlantRecord plant) {
        String last = " " + kind.toLowerCase(Locale.ROOT);
        return plant.commonNames().stream()
                .anyMatch(name -> name.text().toLowerCase(Locale.ROOT).endsWith(last));
    }

    /// `boxwood` begins the names of several plants, all of them box.
    private Optional<Found> mostlyOfOneGenus(List<NameHit> hits) {
        if (hits.isEmpty() || hits.getFirst().how() != NameMatch.PREFIX) {
            return Optional.empty();
        }
        List<PlantRecord> found = plants(hits);
        return found.stream()
                .collect(Collectors.groupingBy(plant -> plant.name().genus(), Collectors.counting()))
                .entrySet()
                .stream()
                .filter(genus -> genus.getValue() * 3 >= hits.size() * 2L)
                .findFirst()
                .map(genus ->
                        chosen(found, false, plant -> !plant.name().genus().equals(genus.getKey())));
    }

    private List<PlantRecord> plants(List<NameHit> hits) {
        return List.copyOf(
                catalog.plants(hits.stream().map(NameHit::plant).toList()).values());
    }

    /// `mimosa tree` is called `mimosa`, and `ash tree` is a white ash or a green one.
    private Optional<Found> withoutKind(String typed) {
        int last = typed.lastIndexOf(' ');
        boolean kind = last > 0 && KINDS.contains(typed.substring(last + 1).toLowerCase(Locale.ROOT));
        if (!kind) {
            return Optional.empty();
        }
        String plain = typed.substring(0, last).strip();
        return sure(plain).or(() -> ofAKind(plain, hits(plain)));
    }

    /// A genus or species of which the catalog has cultivars only, or the beginning of its name. A plum is not looked
    /// for among plumbagos before it is looked for among plums.
    ///
    /// @param end what follows in the names of those meant
    private Optional<Found> ofTaxon(String typed, String end, List<NameHit> hits) {
        String begun = plain(typed) + end;
        List<PlantRecord> within = plants(hits).stream()
                .filter(plant -> Stream.concat(
                                Stream.of(plant.name().toString()),
                                plant.synonyms().stream().map(Synonym::text))
                        .anyMatch(name -> (plain(name) + " ").startsWith(begun)))
                .toList();
        return within.isEmpty() ? Optional.empty() : Optional.of(chosen(within, TypedName.isGenus(typed)));
    }

    /// As it is typed: without hybrid signs.
    private static String plain(String name) {
        return name.replace("×", "").toLowerCase(Locale.ROOT).strip();
    }

    /// Of several that are called so, the one with the plainest name: a species before its cultivars.
    private Found chosen(List<PlantRecord> found, boolean wholeGenus) {
        return chosen(found, wholeGenus, plant -> false);
    }

    /// Of several, most people mean the one that most people grow.
    private static int rare(PlantRecord plant) {
        return plant.facts().value(Attributes.GROWN).map(Grown::ordinal).orElse(Grown.values().length);
    }

    /// How many of each species can be had, all its cultivars and sizes together.
    private Map<TaxonName, Integer> plenty(List<PlantRecord> found) {
        Map<PlantKey, PlantStock> stock =
                catalog.stock(found.stream().map(PlantRecord::key).toList());
        return found.stream()
                .collect(Collectors.toMap(
                        OriginalFinder::species,
                        plant -> stock.getOrDefault(plant.key(), PlantStock.none(plant.key())).lots().stream()
                                .mapToInt(LotRecord::free)
                                .sum(),
                        Integer::sum));
    }

    private static TaxonName species(PlantRecord plant) {
        return TaxonName.of(plant.name()).species();
    }

    /// @param last which of them come after all others
    private Found chosen(List<PlantRecord> found, boolean wholeGenus, Predicate<PlantRecord> last) {
        Map<TaxonName, Integer> plenty = plenty(found);
        List<PlantRecord> inOrder = found.stream()
                .sorted(Comparator.comparing(last::test)
                        .thenComparing(PlantRecord::retired)
                        .thenComparing(ReferencePlants::isReference)
                        .thenComparing(plant -> plant.name().isCultivated())
                        .thenComparing(OriginalFinder::rare)
                        .thenComparing(plant -> -plenty.getOrDefault(species(plant), 0)))
                .toList();
        return new Found(
                inOrder.getFirst(), inOrder.stream().skip(1).limit(NAMED).toList(), wholeGenus);
    }
}
