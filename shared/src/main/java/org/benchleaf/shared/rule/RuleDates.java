package org.benchleaf.shared.rule;

import java.time.LocalDate;
import java.util.Optional;

/// The days of a rule; each is the first day on which something holds, but for the last one.
///
/// @param listed the taxon was put on the list
/// @param receipt none may be brought in or taken in any more; with the sale when not given
/// @param sale none may be sold any more; when not given, from the day of listing, for all that is known
/// @param until the last day of the rule; without end when not given
public record RuleDates(
        Optional<LocalDate> listed, Optional<LocalDate> receipt, Optional<LocalDate> sale, Optional<LocalDate> until) {
    public RuleDates {
        if (receipt.isPresent() && sale.isPresent() && receipt.get().isAfter(sale.get())) {
            throw new IllegalArgumentException("receipt ends before sale does: " + receipt.get() + ", " + sale.get());
        }
    }

    /// First day on which a sale is ruled, as far as it is known.
    public Optional<LocalDate> saleFrom() {
        return sale.or(() -> listed);
    }

    /// First day on which a receipt is ruled, as far as it is known.
    public Optional<LocalDate> receiptFrom() {
        return receipt.or(this::saleFrom);
    }

    public Phase saleOn(LocalDate day) {
        return phase(saleFrom(), day);
    }

    public Phase receiptOn(LocalDate day) {
        return phase(receiptFrom(), day);
    }

    private Phase phase(Optional<LocalDate> from, LocalDate day) {
        if (until.map(day::isAfter).orElse(false)) {
            return Phase.ENDED;
        }
        return from.map(day::isBefore).orElse(false) ? Phase.COMING : Phase.IN_FORCE;
    }
}
