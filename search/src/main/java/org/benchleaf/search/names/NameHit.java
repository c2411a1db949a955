package org.benchleaf.search.names;

import org.benchleaf.shared.code.PlantKey;

/// A plant found by a name.
///
/// @param plant whose name it is
/// @param matched the name that matched, as written in the catalog
/// @param how by what it matched
public record NameHit(PlantKey plant, String matched, NameMatch how) {}
