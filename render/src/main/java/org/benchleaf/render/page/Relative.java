package org.benchleaf.render.page;

import java.util.Optional;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Kinship;

/// Another plant that this one is compared with.
///
/// @param kinship what this plant is to the other: this is the smaller sister of that
/// @param other the other's name
/// @param key the other's page, when the catalog holds it
public record Relative(Kinship kinship, BotanicalName other, Optional<PlantKey> key) {}
