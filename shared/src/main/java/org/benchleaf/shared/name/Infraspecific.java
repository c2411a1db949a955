package org.benchleaf.shared.name;

/// The part of a name below species: `subsp. nigrum`.
public record Infraspecific(Rank rank, Epithet epithet) {}
