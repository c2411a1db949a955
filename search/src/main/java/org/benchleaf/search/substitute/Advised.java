package org.benchleaf.search.substitute;

import org.benchleaf.shared.name.TaxonName;

/// A published list names one kind of plant instead of another.
///
/// @param original the plant replaced, or all of a genus
/// @param instead what to plant; any of its kind is meant, in a genus any of its species
/// @param list which says so
public record Advised(TaxonName original, TaxonName instead, Publication list) {}
