package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;

/// One sighting as staff sees it.
///
/// @param key of the sighting
/// @param name of the plant; empty when the catalog does not know it
/// @param plant its key, as it was sent
/// @param when and by whom, in words
/// @param row size and place, in words; may be empty
/// @param what was seen, in words
/// @param photo path to its photograph
/// @param trouble what stands in its way, in words; empty when nothing does
/// @param rows other rows it may have been: the lot's number, and how it is shown
public record SeenLine(
        String key,
        Optional<BotanicalName> name,
        String plant,
        String when,
        String row,
        String what,
        Optional<String> photo,
        String trouble,
        List<Row> rows) {
    public SeenLine {
        rows = List.copyOf(rows);
    }

    /// A row to choose.
    public record Row(String lot, String text) {}
}
