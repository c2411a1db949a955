package org.benchleaf.render.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.code.LiveLink;

/// The week's best of a crop: one plant that leads, others beside it, and a table of what is here.
///
/// @param from first day for which it is meant
/// @param to last day, not before the first
/// @param lead the pick of the week, when one was chosen
/// @param others in the order of print
/// @param items what is here, in the order of print
/// @param shop who prints
public record Bulletin(
        LocalDate from, LocalDate to, Optional<Pick> lead, List<Pick> others, List<PlantItems> items, Shop shop) {
    public Bulletin {
        others = List.copyOf(others);
        items = List.copyOf(items);
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a bulletin ends on its first day or later; got " + from + " to " + to);
        }
    }

    /// A plant worth buying this week.
    ///
    /// @param title names
    /// @param reason why it is worth buying now, one line; may be empty
    /// @param year data of the year ring, which stands in for a photograph, and of what it does next
    /// @param items those to be had
    /// @param cautions what can hurt whom
    /// @param link the plant's live page
    /// @param photo shown when there is one
    public record Pick(
            PlantTitle title,
            String reason,
            YearLook year,
            List<ItemLine> items,
            List<PageCaution> cautions,
            LiveLink link,
            Optional<Photo> photo) {
        public Pick {
            items = List.copyOf(items);
            cautions = List.copyOf(cautions);
        }
    }
}
