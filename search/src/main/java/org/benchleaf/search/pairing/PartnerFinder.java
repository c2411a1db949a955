package org.benchleaf.search.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Sex;

/// Finds pollination partners in the catalog: those that are named, those of the same group, and those of the
/// same species of which nothing says that they do not suit. Safe for many threads.
public final class PartnerFinder {
    private static final int MOST_OF_GENUS = 200;

    private final CatalogView catalog;
    private final PlantIndex index;

    public PartnerFinder(CatalogView catalog, PlantIndex index) {
        this.catalog = catalog;
        this.index = index;
    }

    /// The partners of a plant, the surest first, and of these what can be had first.
    public List<Partner> of(PlantRecord plant) {
        if (!Pollination.of(plant.facts()).hasPartners()) {
            return List.of();
        }
        Set<PlantKey> keys = new LinkedHashSet<>(named(plant));
        index.withWords(List.of(plant.name().genus().toLowerCase(Locale.ROOT)), MOST_OF_GENUS).stream()
                .map(Named::plant)
                .forEach(keys::add);
        keys.remove(plant.key());
        Map<PlantKey, PlantStock> stocks = catalog.stock(keys);
        List<Partner> partners = new ArrayList<>();
        for (PlantRecord other : catalog.plants(keys).values()) {
            Optional<Partner.How> how = other.retired() ? Optional.empty() : suits(plant, other);
            how.map(why -> new Partner(
                            other,
                            stocks.getOrDefault(other.key(), PlantStock.none(other.key())),
                            why,
                            bloom(plant, other)))
                    .filter(partner -> partner.bloom() != Partner.Bloom.APART || partner.how() == Partner.How.NAMED)
                    .ifPresent(partners::add);
        }
        partners.sort(Comparator.comparing(Partner::how)
                .thenComparing(partner -> partner.stock().lots().stream().noneMatch(lot -> lot.count() > 0))
                .thenComparing(Partner::bloom)
                .thenComparing(partner -> partner.plant().name()));
        return partners;
    }

    /// Whether the second plant can be the partner of the first; empty when it cannot, or nothing speaks for
    /// it.
    public static Optional<Partner.How> suits(PlantRecord plant, PlantRecord other) {
        if (other.name().equals(plant.name()) || !sexesSuit(plant, other)) {
            return Optional.empty();
        }
        if (names(plant, other.name()) || names(other, plant.name())) {
            return Optional.of(Partner.How.NAMED);
        }
        Optional<String> group = plant.facts().value(Attributes.POLLINATION_GROUP);
        Optional<String> otherGroup = other.facts().value(Attributes.POLLINATION_GROUP);
        if (group.isPresent() && otherGroup.isPresent()) {
            if (group.equals(otherGroup)) {
                return Optional.of(Partner.How.SAME_GROUP);
            }
            // `Ilex verticillata early` is part of `Ilex verticillata`, and no partner of its `late`
            boolean within =
                    group.get().startsWith(otherGroup.get()) || otherGroup.get().startsWith(group.get());
            return within ? Optional.of(Partner.How.SAME_SPECIES) : Optional.empty();
        }
        boolean sameSpecies = plant.name().genus().equals(other.name().genus())
                && plant.name().species().isPresent()
                && plant.name().species().equals(other.name().species());
        return sameSpecies ? Optional.of(Partner.How.SAME_SPECIES) : Optional.empty();
    }

    private static boolean sexesSuit(PlantRecord plant, PlantRecord other) {
        Optional<Sex> sex = other.facts().value(Attributes.SEX);
        boolean male = sex.filter(Sex.MALE::equals).isPresent();
        boolean female = sex.filter(Sex.FEMALE::equals).isPresent();
        boolean unsexed = sex.filter(Sex.DIOECIOUS::equals).isPresent();
        return switch (Pollination.of(plant.facts())) {
            case NEEDS_MALE -> male || unsexed;
            case IS_MALE -> female || unsexed;
            case SEXES_APART -> male || female || unsexed;
            case NEEDS_OTHER, BETTER_WITH_OTHER -> !female;
            case ALONE, NOT_KNOWN -> false;
        };
    }

    /// Whether a plant's list of partners holds another: by its name, or by its species.
    private static boolean names(PlantRecord plant, BotanicalName other) {
        List<String> partners =
                plant.facts().value(Attributes.POLLINATION_PARTNERS).orElse(List.of());
        return partners.stream()
                .anyMatch(text -> text.equals(other.toString())
                        || other.taxonAbove()
                                        .map(BotanicalName::toString)
                                        .filter(text::equals)
                                        .isPresent()
                                && !plant.name().taxonAbove().equals(other.taxonAbove()));
    }

    private List<PlantKey> named(PlantRecord plant) {
        NameIndex names = new NameIndex(index);
        return plant.facts().value(Attributes.POLLINATION_PARTNERS).orElse(List.of()).stream()
                .flatMap(text -> names.find(text, 3).stream())
                .filter(hit -> hit.how().compareTo(NameMatch.SYNONYM) <= 0)
                .map(hit -> hit.plant())
                .toList();
    }

    static Partner.Bloom bloom(PlantRecord plant, PlantRecord other) {
        Optional<MonthSet> one = months(plant);
        Optional<MonthSet> two = months(other);
        if (one.isEmpty() || two.isEmpty()) {
            return Partner.Bloom.NOT_KNOWN;
        }
        return one.get().and(two.get()).isEmpty() ? Partner.Bloom.APART : Partner.Bloom.TOGETHER;
    }

    private static Optional<MonthSet> months(PlantRecord plant) {
        return plant.facts().value(Attributes.BLOOM).filter(months -> !months.isEmpty());
    }
}
