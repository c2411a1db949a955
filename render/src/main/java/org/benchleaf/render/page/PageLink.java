package org.benchleaf.render.page;

import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Another plant's page and why it is pointed to.
///
/// @param name of the other plant
/// @param key of its page
/// @param why in a few words
public record PageLink(BotanicalName name, PlantKey key, String why) {}
