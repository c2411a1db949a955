package org.benchleaf.search.substitute;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.names.OlderNames;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;

/// What extension services, agencies and gardens publish about what to plant instead of what. No list is complete: a
/// plant that none names may serve as well.
public final class PublishedAdvice {
    private final List<Advised> all;
    /// Other names of a taxon, older or newer ones: a catalog may have it under one of them.
    private final Map<TaxonName, List<TaxonName>> others;
    /// By genus of the original: few of all lists are looked through for one plant.
    private final Map<String, List<Advised>> byGenus;
    /// By what is named, under all its names.
    private final Map<TaxonName, List<Advised>> byInstead;

    private PublishedAdvice(List<Advised> all, Map<TaxonName, List<TaxonName>> others) {
        this.all = List.copyOf(all);
        this.others = Map.copyOf(others);
        this.byGenus = all.stream()
                .flatMap(this::underAllNames)
                .collect(Collectors.groupingBy(one -> one.original().genus()));
        this.byInstead = all.stream()
                .flatMap(one -> names(one.instead()).map(instead -> new Advised(one.original(), instead, one.list())))
                .collect(Collectors.groupingBy(Advised::instead));
    }

    /// Lists of one's own.
    public static PublishedAdvice of(List<Advised> all) {
        return new PublishedAdvice(all, Map.of());
    }

    /// The same for a catalog that may have plants under older or newer names than the lists.
    public PublishedAdvice under(OlderNames names) {
        return new PublishedAdvice(
                all,
                names.all().stream()
                        .filter(name -> !name.older().isCultivated())
                        .flatMap(name -> {
                            TaxonName older = TaxonName.of(name.older());
                            TaxonName accepted = TaxonName.of(name.accepted());
                            return Stream.of(Map.entry(older, accepted), Map.entry(accepted, older));
                        })
                        .collect(Collectors.groupingBy(
                                Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList()))));
    }

    private Stream<Advised> underAllNames(Advised one) {
        return names(one.original())
                .flatMap(original -> names(one.instead()).map(instead -> new Advised(original, instead, one.list())));
    }

    private Stream<TaxonName> names(TaxonName taxon) {
        return Stream.concat(Stream.of(taxon), others.getOrDefault(taxon, List.of()).stream());
    }

    /// The lists that come with the program.
    public static PublishedAdvice builtIn() {
        Map<String, Publication> lists = lines("instead-sources.tsv").stream()
                .collect(Collectors.toMap(
                        cells -> cells[0],
                        cells -> new Publication(cells[1], homes(cells[2]), cells[3], cells[4], cells[5])));
        return of(lines("instead.tsv").stream()
                .flatMap(cells -> Stream.of(cells[2].split(" "))
                        .map(id -> new Advised(new TaxonName(cells[0]), new TaxonName(cells[1]), known(lists, id))))
                .toList());
    }

    private static Set<Region> homes(String codes) {
        return Stream.of(codes.split(" "))
                .filter(code -> !code.isEmpty())
                .map(Region::new)
                .collect(Collectors.toSet());
    }

    /// These and more.
    public PublishedAdvice with(List<Advised> more) {
        return new PublishedAdvice(Stream.concat(all.stream(), more.stream()).toList(), others);
    }

    /// Each row of each list.
    public List<Advised> all() {
        return all;
    }

    /// The same without some of it.
    public PublishedAdvice without(Predicate<Advised> left) {
        return new PublishedAdvice(all.stream().filter(left.negate()).toList(), others);
    }

    private static Publication known(Map<String, Publication> publications, String id) {
        Publication publication = publications.get(id);
        if (publication == null) {
            throw new IllegalStateException("instead.tsv names a list that instead-sources.tsv lacks: " + id);
        }
        return publication;
    }

    private static List<String[]> lines(String file) {
        try (InputStream stream = PublishedAdvice.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException(file + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split("\t", -1))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// What a plant is named instead of, that which most publishers say first.
    ///
    /// @param place whose publishers are told first, when one is meant
    public List<Replaced> replacedBy(BotanicalName plant, Optional<Region> place) {
        Map<TaxonName, List<Advised>> byOriginal = TaxonName.of(plant).lineage().stream()
                .flatMap(taxon -> byInstead.getOrDefault(taxon, List.of()).stream())
                .collect(Collectors.groupingBy(Advised::original));
        return byOriginal.entrySet().stream()
                .map(rows -> new Replaced(
                        rows.getKey(),
                        Advice.publishers(rows.getValue().stream().map(Advised::list), place)))
                .sorted(Comparator.comparing((Replaced one) -> -one.publishers().size())
                        .thenComparing(one -> one.original().text()))
                .toList();
    }

    /// Whether some list says what to plant instead of this very taxon, under one of its names.
    public boolean replaces(TaxonName original) {
        return byGenus.getOrDefault(original.genus(), List.of()).stream()
                .anyMatch(one -> one.original().equals(original));
    }

    /// What lists name in the place of a plant: those headed by its species and those headed by its genus; for a bare
    /// genus, those of all its species.
    ///
    /// @param place the state that plants go to, when it is known
    public Advice insteadOf(BotanicalName original, Optional<Region> place) {
        TaxonName taxon = TaxonName.of(original);
        boolean bareGenus = original.equals(BotanicalName.ofGenus(original.genus()));
        return new Advice(
                taxon.species(),
                byGenus.getOrDefault(original.genus(), List.of()).stream()
                        .filter(one -> bareGenus || taxon.lineage().contains(one.original()))
                        .collect(Collectors.groupingBy(
                                Advised::instead, Collectors.mapping(Advised::list, Collectors.toSet()))),
                place);
    }
}
