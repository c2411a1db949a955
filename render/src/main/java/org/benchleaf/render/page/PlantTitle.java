package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;

/// How a plant is headed wherever it is shown.
///
/// @param botanical the accepted name, in parts
/// @param commonNames in the language of the page, the most usual first; may be empty
/// @param family botanical family, such as `Hamamelidaceae`
public record PlantTitle(BotanicalName botanical, List<String> commonNames, Optional<String> family) {
    public PlantTitle {
        commonNames = List.copyOf(commonNames);
    }

    public static PlantTitle of(BotanicalName botanical, String... commonNames) {
        return new PlantTitle(botanical, List.of(commonNames), Optional.empty());
    }
}
