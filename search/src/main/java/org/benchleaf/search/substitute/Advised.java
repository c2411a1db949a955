package org.benchleaf.search.substitute;

/// A published list names one kind of plant instead of another.
///
/// @param original a genus, or genus and epithet
/// @param instead a genus, of which any species is meant, or genus and epithet
/// @param list which says so
public record Advised(String original, String instead, Publication list) {
    /// The genus of a taxon as it stands in a list.
    public static String genus(String taxon) {
        int blank = taxon.indexOf(' ');
        return blank < 0 ? taxon : taxon.substring(0, blank);
    }
}
