package org.benchleaf.catalog.model;

import org.benchleaf.shared.fact.Source;

/// Another botanical name of the same plant, kept so that people who know only that one find it.
///
/// @param text as written, without author
/// @param source who gives it as a synonym
public record Synonym(String text, Source source) {}
