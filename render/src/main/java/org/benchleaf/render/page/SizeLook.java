package org.benchleaf.render.page;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;

/// How big a plant gets and in what outline: the data of the size stand.
///
/// @param height mature height; without it no silhouette is drawn to scale
/// @param spread mature spread; absent: drawn in the proportion usual for its habit, and not labelled
/// @param heightTenYears height at ten years
/// @param spreadTenYears spread at ten years
/// @param habit the outline
/// @param lifeForms kinds of plant, decides trunk or none
/// @param foliage leaves in winter
/// @param leaf the color of the silhouette, usually summer foliage
/// @param stem the color of twigs and bark, where they are worth a look in winter
public record SizeLook(
        Optional<LengthRange> height,
        Optional<LengthRange> spread,
        Optional<LengthRange> heightTenYears,
        Optional<LengthRange> spreadTenYears,
        Optional<Habit> habit,
        Set<LifeForm> lifeForms,
        Optional<Foliage> foliage,
        Optional<PlantColor> leaf,
        Optional<PlantColor> stem) {
    public SizeLook {
        lifeForms = Set.copyOf(lifeForms);
    }

    /// A plant whose twigs and bark are as usual.
    public SizeLook(
            Optional<LengthRange> height,
            Optional<LengthRange> spread,
            Optional<LengthRange> heightTenYears,
            Optional<LengthRange> spreadTenYears,
            Optional<Habit> habit,
            Set<LifeForm> lifeForms,
            Optional<Foliage> foliage,
            Optional<PlantColor> leaf) {
        this(height, spread, heightTenYears, spreadTenYears, habit, lifeForms, foliage, leaf, Optional.empty());
    }

    public static SizeLook unknown() {
        return new SizeLook(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
