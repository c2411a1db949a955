package org.benchleaf.catalog.model;

import java.util.Locale;

/// A name in a living language.
///
/// @param text as people say it
/// @param language for example `en`
public record CommonName(String text, Locale language) {}
