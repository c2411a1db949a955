package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;

/// What a plant shows through twelve months: the data of the year ring.
///
/// @param flower flowers, absent when not known or none worth naming
/// @param persistence whether leaves stay in winter
/// @param springFoliage colors of the new leaves, empty when not stated
/// @param summerFoliage colors of the grown leaves
/// @param fallFoliage colors in fall, empty when none or not known
/// @param fallMonths months of fall color; absent: October and November
/// @param winterFoliage colors of leaves that stay, empty when as in summer
/// @param fruit fruit that shows
/// @param stem bark or stems that show
public record YearLook(
        Optional<Show> flower,
        Optional<Foliage> persistence,
        List<PlantColor> springFoliage,
        List<PlantColor> summerFoliage,
        List<PlantColor> fallFoliage,
        Optional<MonthSet> fallMonths,
        List<PlantColor> winterFoliage,
        Optional<Show> fruit,
        Optional<Show> stem) {
    public YearLook {
        springFoliage = List.copyOf(springFoliage);
        summerFoliage = List.copyOf(summerFoliage);
        fallFoliage = List.copyOf(fallFoliage);
        winterFoliage = List.copyOf(winterFoliage);
    }

    /// Nothing known: the ring stays as four fine tracks.
    public static YearLook unknown() {
        return new YearLook(
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /// Whether there is anything to draw.
    public boolean isUnknown() {
        return equals(unknown());
    }
}
