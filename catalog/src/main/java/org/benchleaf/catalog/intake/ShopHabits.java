package org.benchleaf.catalog.intake;

import java.time.LocalDate;
import java.util.Optional;
import org.benchleaf.shared.stock.ContainerNaming;

/// What the reading of a list hangs on beside the list itself.
///
/// @param containers what the shop calls container classes: whether `3 gal` is a size
/// @param today the day on which it is read: `wk 14` is the next week 14; without it such a week is refused
public record ShopHabits(ContainerNaming containers, Optional<LocalDate> today) {
    /// Gallons are no sizes, and weeks have their year.
    public static final ShopHabits NONE = new ShopHabits(ContainerNaming.NUMBER, Optional.empty());

    public ShopHabits(ContainerNaming containers, LocalDate today) {
        this(containers, Optional.of(today));
    }
}
