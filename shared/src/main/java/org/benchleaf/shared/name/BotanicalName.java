package org.benchleaf.shared.name;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/// The name of a taxon or cultivar, its parts kept apart as the codes for wild (ICN) and cultivated
/// plants (ICNCP) do.
///
/// @param genusMark × for a nothogenus, + for a graft-chimaera
/// @param genus capital first
/// @param species absent for a genus, and for a cultivar named under its genus alone
/// @param infraspecific rank and epithet below species
/// @param group a Group's name without the word Group
/// @param cultivar the cultivar epithet without quotes
/// @param tradeDesignation the selling name that is not a cultivar epithet, without marks
/// @throws IllegalArgumentException when a part has an impossible form
public record BotanicalName(
        HybridMark genusMark,
        String genus,
        Optional<Epithet> species,
        Optional<Infraspecific> infraspecific,
        Optional<String> group,
        Optional<String> cultivar,
        Optional<String> tradeDesignation)
        implements Comparable<BotanicalName> {
    private static final Pattern GENUS = Pattern.compile("\\p{Lu}\\p{Ll}+(?:-\\p{L}+)*");
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{Nd} ]");

    public BotanicalName {
        if (!GENUS.matcher(genus).matches()) {
            throw new IllegalArgumentException("not a genus: " + genus);
        }
        if (infraspecific.isPresent() && species.isEmpty()) {
            throw new IllegalArgumentException("a rank below species needs a species: " + genus);
        }
    }

    public static BotanicalName ofGenus(String genus) {
        return new BotanicalName(
                HybridMark.NONE,
                genus,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static BotanicalName ofSpecies(String genus, String epithet) {
        return ofGenus(genus).withSpecies(Epithet.of(epithet));
    }

    public BotanicalName withSpecies(Epithet epithet) {
        return new BotanicalName(
                genusMark, genus, Optional.of(epithet), infraspecific, group, cultivar, tradeDesignation);
    }

    public BotanicalName withCultivar(String epithet) {
        return new BotanicalName(
                genusMark, genus, species, infraspecific, group, Optional.of(epithet), tradeDesignation);
    }

    /// Whether it names more than a wild taxon: a Group, a cultivar or what a plant is sold as.
    public boolean isCultivated() {
        return group.isPresent() || cultivar.isPresent() || tradeDesignation.isPresent();
    }

    /// The taxon whose facts hold for this plant unless it states its own: the name without what
    /// cultivation added, or the species above a rank below it. Empty for a genus, and for a cultivar
    /// under its genus alone.
    public Optional<BotanicalName> taxonAbove() {
        boolean cultivated = isCultivated();
        if (species.isEmpty() || !cultivated && infraspecific.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BotanicalName(
                genusMark,
                genus,
                species,
                cultivated ? infraspecific : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    /// The name as a label has room for: a cultivar without its Group and without the rank below species,
    /// for genus and epithet name it alone (ICNCP Art. 8, from memory). Any other name is whole.
    public BotanicalName labelName() {
        boolean cultivar = this.cultivar.isPresent() || tradeDesignation.isPresent();
        return cultivar
                ? new BotanicalName(
                        genusMark, genus, species, Optional.empty(), Optional.empty(), this.cultivar, tradeDesignation)
                : this;
    }

    /// The name without what it is sold as.
    public BotanicalName withoutTradeDesignation() {
        return new BotanicalName(genusMark, genus, species, infraspecific, group, cultivar, Optional.empty());
    }

    /// The parts in the order of print, each with the type it is set in.
    public List<NamePart> parts() {
        List<NamePart> parts = new ArrayList<>();
        addMarked(parts, genusMark, genus, false);
        species.ifPresent(epithet -> addMarked(parts, epithet.mark(), epithet.text(), true));
        infraspecific.ifPresent(below -> {
            parts.add(new NamePart(below.rank().mark(), NamePart.Type.ROMAN, true));
            addMarked(parts, below.epithet().mark(), below.epithet().text(), true);
        });
        boolean more = cultivar.isPresent() || tradeDesignation.isPresent();
        group.ifPresent(name ->
                parts.add(new NamePart(more ? "(" + name + " Group)" : name + " Group", NamePart.Type.ROMAN, true)));
        cultivar.ifPresent(epithet -> parts.add(new NamePart("'" + epithet + "'", NamePart.Type.CULTIVAR, true)));
        tradeDesignation.ifPresent(
                name -> parts.add(new NamePart(name.toUpperCase(Locale.ROOT), NamePart.Type.TRADE, true)));
        return List.copyOf(parts);
    }

    private static void addMarked(List<NamePart> parts, HybridMark mark, String latin, boolean spaced) {
        if (mark != HybridMark.NONE) {
            // ICN Rec. H.3A: the sign stands against the epithet; + for chimaeras stands apart
            parts.add(new NamePart(mark.sign(), NamePart.Type.ROMAN, spaced));
        }
        parts.add(new NamePart(
                latin, NamePart.Type.LATIN, mark == HybridMark.GRAFT || mark == HybridMark.NONE && spaced));
    }

    /// Lower-case letters without accents, marks, quotes and ranks, for order in lists.
    public String sortKey() {
        StringBuilder key = new StringBuilder();
        for (NamePart part : parts()) {
            if (part.type() != NamePart.Type.ROMAN || part.text().contains("Group")) {
                key.append(key.isEmpty() ? "" : " ").append(part.text());
            }
        }
        return isPlain(key) ? plainSortKey(key) : sortKey(key);
    }

    private static boolean isPlain(CharSequence text) {
        return text.chars().allMatch(letter -> letter <= 0x7f);
    }

    /// What [#sortKey(CharSequence)] makes of letters without accents, as nearly all are: names are sorted by the
    /// hundred thousand.
    private static String plainSortKey(StringBuilder text) {
        int kept = 0;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == ' ' || Character.isLetterOrDigit(letter)) {
                text.setCharAt(kept++, Character.toLowerCase(letter));
            }
        }
        return text.substring(0, kept);
    }

    private static String sortKey(CharSequence text) {
        String bare = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return SIGNS.matcher(bare).replaceAll("");
    }

    @Override
    public int compareTo(BotanicalName other) {
        int byKey = sortKey().compareTo(other.sortKey());
        return byKey != 0 ? byKey : toString().compareTo(other.toString());
    }

    /// Plain text: `Viburnum plicatum f. tomentosum 'Mariesii'`.
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (NamePart part : parts()) {
            text.append(part.spaced() ? " " : "").append(part.text());
        }
        return text.toString();
    }
}
