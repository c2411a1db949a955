package org.benchleaf.render.page;

import java.time.LocalDateTime;
import java.util.List;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Availability;

/// What can be had, as a page: one genus of it or a part of all, by name.
///
/// @param genus the genus that is shown; empty for all
/// @param asOf the shop's own time
/// @param here plants of which some can be taken today
/// @param plants all that can be had, now or later
/// @param genera every genus, with how many plants of it, to go to
/// @param lines the plants shown
/// @param earlier path to the part before; empty on the first
/// @param later path to the next part; empty on the last
/// @param bulletin path to the newest bulletin; empty when there is none
public record AvailabilityPage(
        String genus,
        LocalDateTime asOf,
        long here,
        int plants,
        List<Genus> genera,
        List<Line> lines,
        String earlier,
        String later,
        String bulletin,
        Shop shop) {
    public AvailabilityPage {
        genera = List.copyOf(genera);
        lines = List.copyOf(lines);
    }

    /// @param path to what can be had of it
    public record Genus(String name, int plants, String path) {}

    /// One plant.
    ///
    /// @param common may be empty
    public record Line(BotanicalName name, String common, PlantKey key, List<ItemLine> items) {
        public Line {
            items = List.copyOf(items);
        }

        /// Whether some can be taken today.
        public boolean isHere() {
            return items.stream().anyMatch(item -> item.availability() instanceof Availability.InStock);
        }
    }
}
