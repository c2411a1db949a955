package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;

/// Says which rows of a list are none of it: totals below it, and rows that repeat an earlier one cell by
/// cell.
final class RowFilter {
    private static final Pattern TOTAL =
            Pattern.compile("(?:grand |sub)?-?totals?(?: .{0,30})?:?|sum:?|Σ:?", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER = Pattern.compile("[$€£]?\\s?-?[\\d.,]+\\s?%?|#[A-Z/0!?]+");
    /// More numbers than this under no name are a row that lost its name.
    private static final int MOST_TOTALS = 3;

    private final TextNumbers seen = new TextNumbers();

    /// Why a row is passed over; empty when it is one of the list.
    ///
    /// @param name the text under the heading of names
    Optional<Problem> passedOver(RawRow row, String name) {
        List<String> texts =
                row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
        List<String> words =
                texts.stream().filter(cell -> !NUMBER.matcher(cell).matches()).toList();
        boolean labelled = words.size() == 1 && TOTAL.matcher(words.get(0)).matches();
        boolean bare = words.isEmpty()
                && name.isEmpty()
                && texts.size() <= MOST_TOTALS
                && row.cells().size() > 2;
        if (labelled || bare) {
            return Optional.of(Problem.of("row.total", String.join(" ", texts)));
        }
        OptionalLong first = seen.putIfAbsent(String.join("\u001f", row.cells()), row.number());
        return first.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Problem.of("row.duplicate", name.isEmpty() ? row.cells().get(0) : name)
                                .with("row", Long.toString(first.getAsLong())));
    }
}
