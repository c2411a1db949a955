package org.benchleaf.render.page;

import java.util.List;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;

/// A time in which something of a plant is worth looking at.
///
/// @param colors the most typical first; may be empty when not known
/// @param months when; may be empty when not known
public record Show(List<PlantColor> colors, MonthSet months) {
    public Show {
        colors = List.copyOf(colors);
    }
}
