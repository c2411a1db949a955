package org.benchleaf.search.facet;

/// How many plants a value of a facet would leave.
///
/// @param value a word of the facet, or a size such as `#3`
/// @param plants 1 or more
public record FacetCount(String value, int plants) {}
