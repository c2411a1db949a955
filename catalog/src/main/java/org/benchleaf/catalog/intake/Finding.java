package org.benchleaf.catalog.intake;

import org.benchleaf.shared.Problem;

/// Something in a spreadsheet that a person should know: where, what was read, what was done about it.
///
/// @param place file, row and column
/// @param problem what was read and what is accepted
/// @param outcome what became of the row
public record Finding(Place place, Problem problem, Outcome outcome) {
    /// What was done with the row in which something was found.
    public enum Outcome {
        /// Loaded as it stands; someone should look at it.
        KEPT,
        /// The row is none of the list, a total or a repetition; nothing of the list is lost with it.
        PASSED_OVER,
        /// Loaded without this cell.
        CELL_LEFT_OUT,
        /// Not loaded. In a plan with such a finding nothing is applied unless the person allows it.
        ROW_LEFT_OUT
    }
}
