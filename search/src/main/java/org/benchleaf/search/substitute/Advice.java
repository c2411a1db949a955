package org.benchleaf.search.substitute;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.Wish;

/// What published lists say of one original.
///
/// @param original its species, or genus where the species is not known
/// @param named which lists name what
/// @param place the state that plants go to; its own publishers are told first
public record Advice(TaxonName original, Map<TaxonName, Set<Publication>> named, Optional<Region> place) {
    public Advice {
        named = Map.copyOf(named);
    }

    public boolean isEmpty() {
        return named.isEmpty();
    }

    /// Who names a plant instead of the original, the shop first, then those of the place, then in alphabetical
    /// order; cultivars are named with their taxon. A publisher of several lists is told once.
    public List<String> publishersOf(BotanicalName plant) {
        return publishers(of(TaxonName.of(plant)), place);
    }

    /// Who stand behind lists, in the order of [#publishersOf].
    static List<String> publishers(Stream<Publication> lists, Optional<Region> place) {
        return lists.sorted(Comparator.comparing((Publication list) -> !list.isOwn())
                        .thenComparing(list -> !list.isOf(place))
                        .thenComparing(Publication::publisher))
                .map(Publication::publisher)
                .distinct()
                .toList();
    }

    /// The wish for what lists name. Each publisher counts once, whether it names a species or all of its genus.
    Wish.NamedInstead wish() {
        return new Wish.NamedInstead(original, named.keySet().stream().collect(Collectors.toMap(taxon -> taxon, taxon ->
                (int) of(taxon).map(Publication::publisher).distinct().count())));
    }

    /// The wish for what the shop itself says, when it says anything.
    Optional<Wish.NamedInstead> ownWish() {
        Map<TaxonName, Integer> own = named.keySet().stream()
                .filter(taxon -> of(taxon).anyMatch(Publication::isOwn))
                .collect(Collectors.toMap(taxon -> taxon, taxon -> 1));
        return own.isEmpty() ? Optional.empty() : Optional.of(new Wish.NamedInstead(original, own));
    }

    private Stream<Publication> of(TaxonName taxon) {
        return taxon.lineage().stream().flatMap(one -> named.getOrDefault(one, Set.of()).stream());
    }
}
