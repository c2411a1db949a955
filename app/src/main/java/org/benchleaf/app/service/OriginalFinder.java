package org.benchleaf.app.service;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

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

    /// @param plants finds keys and what is misspelt
    /// @param references read only when the catalog does not have the name
    public OriginalFinder(
            CatalogView catalog, PlantFinder plants, Supplier<NameIndex> names, Supplier<ReferencePlants> references) {
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
    public record Found(PlantRecord plant, List<PlantRecord> others, boolean wholeGenus) {
        public Found {
            others = List.copyOf(others);
        }
    }

    /// @throws org.benchleaf.app.Refusal when nothing is known by that name, or a misspelt one fits several
    public Found find(String text) {
        String typed = text.strip();
        if (isKey(typed)) {
            return new Found(plants.find(typed), List.of(), false);
        }
        List<NameHit> hits = hits(typed);
        Optional<Found> sure = sure(typed, hits);
        if (sure.isPresent()) {
            return sure.get();
        }
        List<NameHit> ofTaxon =
                hits.stream().filter(hit -> isWithin(typed, hit)).toList();
        if (!ofTaxon.isEmpty()) {
            return chosen(ofTaxon, isGenus(typed));
        }
        Optional<Found> ofGenus = mostlyOfOneGenus(hits).or(() -> withoutKind(typed));
        if (ofGenus.isPresent()) {
            return ofGenus.get();
        }
        return references
                .get()
                .ofGenus(typed, catalog.saleRules())
                .map(plant -> new Found(plant, List.of(), true))
                .orElseGet(() -> new Found(plants.find(typed), List.of(), false));
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
            return Optional.of(
                    chosen(sure.stream().filter(hit -> hit.how() == best).toList(), isGenus(typed)));
        }
        return references
                .get()
                .find(typed, catalog.saleRules())
                .map(plant -> new Found(plant, List.of(), isGenus(typed)));
    }

    private static boolean isKey(String typed) {
        return PlantKey.read(typed).toOptional().isPresent()
                || ItemKey.read(typed).toOptional().isPresent();
    }

    /// `boxwood` is in the names of several plants, all of them box; `hemlock` in those of some, and of one yew.
    private Optional<Found> mostlyOfOneGenus(List<NameHit> hits) {
        if (hits.isEmpty() || hits.getFirst().how() != NameMatch.PREFIX) {
            return Optional.empty();
        }
        Map<PlantKey, PlantRecord> found =
                catalog.plants(hits.stream().map(NameHit::plant).toList());
        Map<String, Long> genera = found.values().stream()
                .collect(Collectors.groupingBy(plant -> plant.name().genus(), Collectors.counting()));
        return genera.entrySet().stream()
                .filter(genus -> genus.getValue() * 3 >= hits.size() * 2L)
                .findFirst()
                .map(genus -> chosen(hits, false, plant -> !plant.name().genus().equals(genus.getKey())));
    }

    /// `mimosa tree` is called `mimosa`, and `ash tree` is a white ash or a green one.
    private Optional<Found> withoutKind(String typed) {
        int last = typed.lastIndexOf(' ');
        boolean kind = last > 0 && KINDS.contains(typed.substring(last + 1).toLowerCase(Locale.ROOT));
        String plain = kind ? typed.substring(0, last).strip() : typed;
        Optional<Found> sure = kind ? sure(plain) : Optional.empty();
        return sure.or(() -> endingSo(plain));
    }

    private Optional<Found> endingSo(String typed) {
        List<PlantRecord> found = references.get().endingSo(typed, catalog.saleRules());
        return found.stream()
                .findFirst()
                .map(plant ->
                        new Found(plant, found.stream().skip(1).limit(NAMED).toList(), false));
    }

    private static boolean isGenus(String typed) {
        return NameReader.read(typed) instanceof NameReading.Read(BotanicalName name, var notes)
                && name.toString().equals(name.genus())
                && typed.equalsIgnoreCase(name.genus());
    }

    /// A genus or species of which the catalog has cultivars only.
    private boolean isWithin(String typed, NameHit hit) {
        boolean begun = hit.how() == NameMatch.PREFIX
                && hit.matched().toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT));
        return begun
                && NameReader.read(typed) instanceof NameReading.Read(BotanicalName name, var notes)
                && name.cultivar().isEmpty();
    }

    /// Of several that are called so, the one with the plainest name: a species before its cultivars.
    private Found chosen(List<NameHit> hits, boolean wholeGenus) {
        return chosen(hits, wholeGenus, plant -> false);
    }

    /// @param last which of them come after all others
    private Found chosen(List<NameHit> hits, boolean wholeGenus, Predicate<PlantRecord> last) {
        Map<PlantKey, PlantRecord> found =
                catalog.plants(hits.stream().map(NameHit::plant).toList());
        List<PlantRecord> inOrder = found.values().stream()
                .sorted(Comparator.comparing(last::test)
                        .thenComparing(PlantRecord::retired)
                        .thenComparing(plant -> plant.name().cultivar().isPresent()
                                || plant.name().tradeDesignation().isPresent()))
                .toList();
        return new Found(
                inOrder.getFirst(), inOrder.stream().skip(1).limit(NAMED).toList(), wholeGenus);
    }
}
