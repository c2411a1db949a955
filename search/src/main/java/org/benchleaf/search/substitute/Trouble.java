package org.benchleaf.search.substitute;

/// A pest or disease for whose sake a plant may have to be replaced.
///
/// @param name in English, such as `boxwood blight`
/// @param host the host as the list names it: a genus or a species
/// @param source who lists the host
public record Trouble(String name, String host, String source) {}
