package org.benchleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Wish;
import picocli.CommandLine.Option;

/// Which plants are meant by name, or ruled out, and whose rights are in the way, as options.
final class TaxonOptions {
    @Option(names = "--genus", paramLabel = "GENUS", description = "of this genus")
    private Optional<String> genus = Optional.empty();

    @Option(names = "--not-genus", paramLabel = "GENUS", description = "not of this genus; may be repeated")
    private List<String> notGenus = List.of();

    @Option(names = "--species", paramLabel = "SPECIES", description = "of this species, for example 'Acer rubrum'")
    private Optional<String> species = Optional.empty();

    @Option(names = "--not-species", paramLabel = "SPECIES", description = "not of this species; may be repeated")
    private List<String> notSpecies = List.of();

    @Option(names = "--family", paramLabel = "FAMILY", description = "of this family, for example Ericaceae")
    private Optional<String> family = Optional.empty();

    @Option(names = "--not-family", paramLabel = "FAMILY", description = "not of this family; may be repeated")
    private List<String> notFamily = List.of();

    @Option(names = "--free-of", paramLabel = "RIGHT", description = "patent or mark; may be repeated")
    private List<Wish.Right> freeOf = List.of();

    /// The wishes given.
    List<Wish> wishes() {
        List<Wish> wishes = new ArrayList<>();
        family.ifPresent(text -> wishes.add(new Wish.OfFamily(text)));
        notFamily.forEach(text -> wishes.add(new Wish.NotOfFamily(text)));
        genus.ifPresent(text -> wishes.add(new Wish.OfGenus(text)));
        notGenus.forEach(text -> wishes.add(new Wish.NotOfGenus(text)));
        species.map(TaxonOptions::species)
                .ifPresent(name -> wishes.add(new Wish.OfSpecies(
                        name.genus(), name.species().orElseThrow().text())));
        notSpecies.stream()
                .map(TaxonOptions::species)
                .forEach(name -> wishes.add(new Wish.NotOfSpecies(
                        name.genus(), name.species().orElseThrow().text())));
        freeOf.forEach(right -> wishes.add(new Wish.FreeOf(right)));
        return wishes;
    }

    /// Genus and epithet, whatever hybrid mark or rank stands between or behind.
    private static BotanicalName species(String text) {
        return NameReader.read(text)
                .known()
                .filter(known -> known.species().isPresent())
                .orElseThrow(() -> new Refusal(Problem.of("species.unread", text)));
    }
}
