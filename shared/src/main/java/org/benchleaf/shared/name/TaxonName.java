package org.benchleaf.shared.name;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A genus, a species or a taxon below it, as lists of plants write it: without hybrid signs and without what
/// cultivation adds.
///
/// @param text `Viburnum`, `Viburnum opulus` or `Viburnum opulus var. americanum`
/// @throws IllegalArgumentException when the text has another form
public record TaxonName(String text) {
    private static final Pattern FORM = Pattern.compile(
            "(?<species>(?<genus>\\p{Lu}\\p{Ll}+(?:-\\p{L}+)*)(?: \\p{Ll}[\\p{Ll}-]*)?)(?: (?:subsp|var|f)\\. \\p{Ll}[\\p{Ll}-]*)?");

    public TaxonName {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("not the name of a taxon: " + text);
        }
    }

    /// The lowest taxon that a plant's name tells.
    public static TaxonName of(BotanicalName name) {
        StringBuilder text = new StringBuilder(name.genus());
        name.species().ifPresent(epithet -> text.append(' ').append(epithet.text()));
        name.infraspecific()
                .ifPresent(below -> text.append(' ')
                        .append(below.rank().mark())
                        .append(' ')
                        .append(below.epithet().text()));
        return new TaxonName(text.toString());
    }

    /// The same as a plant's name.
    public BotanicalName asName() {
        String[] words = text.split(" ");
        BotanicalName genus = BotanicalName.ofGenus(words[0]);
        return words.length == 1 ? genus : below(genus.withSpecies(Epithet.of(words[1])), words);
    }

    private static BotanicalName below(BotanicalName species, String[] words) {
        return words.length == 2
                ? species
                : new BotanicalName(
                        species.genusMark(),
                        species.genus(),
                        species.species(),
                        Optional.of(new Infraspecific(rank(words[2]), Epithet.of(words[3]))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
    }

    private static Rank rank(String mark) {
        return Arrays.stream(Rank.values())
                .filter(rank -> rank.mark().equals(mark))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(mark));
    }

    public String genus() {
        return part("genus");
    }

    /// Genus and epithet, or the genus alone.
    public TaxonName species() {
        return new TaxonName(part("species"));
    }

    public boolean isGenus() {
        return text.indexOf(' ') < 0;
    }

    /// This taxon and those that it belongs to, up to the genus.
    public List<TaxonName> lineage() {
        List<TaxonName> line = new ArrayList<>(List.of(this));
        if (!line.getLast().equals(species())) {
            line.add(species());
        }
        if (!isGenus()) {
            line.add(new TaxonName(genus()));
        }
        return List.copyOf(line);
    }

    private String part(String name) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new IllegalStateException(text);
        }
        return form.group(name);
    }

    @Override
    public String toString() {
        return text;
    }
}
