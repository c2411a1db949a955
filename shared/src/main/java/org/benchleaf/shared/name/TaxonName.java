package org.benchleaf.shared.name;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// A genus, a species or a taxon below it, as lists of plants write it: without hybrid signs and without what
/// cultivation adds.
///
/// @param text `Viburnum`, `Viburnum opulus` or `Viburnum opulus var. americanum`
/// @throws IllegalArgumentException when the text has another form
public record TaxonName(String text) {
    public TaxonName {
        // many are made for one answer: by hand, for patterns take ten times as long
        String[] words = text.split(" ", -1);
        boolean sound = isGenus(words[0])
                && (words.length == 1
                        || words.length == 2 && isEpithet(words[1])
                        || words.length == 4
                                && isEpithet(words[1])
                                && rank(words[2]).isPresent()
                                && isEpithet(words[3]));
        if (!sound) {
            throw new IllegalArgumentException("not the name of a taxon: " + text);
        }
    }

    private static boolean isGenus(String word) {
        return word.length() > 1
                && Character.isUpperCase(word.charAt(0))
                && word.chars().skip(1).allMatch(letter -> Character.isLetter(letter) || letter == '-');
    }

    private static boolean isEpithet(String word) {
        return !word.isEmpty()
                && Character.isLowerCase(word.charAt(0))
                && word.chars().allMatch(letter -> Character.isLowerCase(letter) || letter == '-');
    }

    private static Optional<Rank> rank(String mark) {
        return Arrays.stream(Rank.values())
                .filter(rank -> rank.mark().equals(mark))
                .findFirst();
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
                        rank(words[2]).map(rank -> new Infraspecific(rank, Epithet.of(words[3]))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
    }

    public String genus() {
        return begin(text.indexOf(' '));
    }

    /// Genus and epithet, or the genus alone.
    public TaxonName species() {
        int blank = text.indexOf(' ');
        int second = blank < 0 ? -1 : text.indexOf(' ', blank + 1);
        return second < 0 ? this : new TaxonName(begin(second));
    }

    private String begin(int end) {
        return end < 0 ? text : text.substring(0, end);
    }

    public boolean isGenus() {
        return text.indexOf(' ') < 0;
    }

    /// This taxon and those that it belongs to, up to the genus.
    public List<TaxonName> lineage() {
        if (isGenus()) {
            return List.of(this);
        }
        TaxonName species = species();
        TaxonName genus = new TaxonName(genus());
        return species.equals(this) ? List.of(this, genus) : List.of(this, species, genus);
    }

    @Override
    public String toString() {
        return text;
    }
}
