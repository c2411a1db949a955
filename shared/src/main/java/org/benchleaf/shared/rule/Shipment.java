package org.benchleaf.shared.rule;

import java.time.LocalDate;
import java.util.Optional;

/// A plant on its way: what sale rules are judged for.
///
/// @param to where it is sold or shipped to
/// @param on the day
/// @param from where it comes from; when it is given and lies outside a jurisdiction, shipping is also a receipt
///     there
public record Shipment(Destination to, LocalDate on, Optional<Destination> from) {
    public static Shipment to(Destination to, LocalDate on) {
        return new Shipment(to, on, Optional.empty());
    }

    public Shipment from(Destination place) {
        return new Shipment(to, on, Optional.of(place));
    }
}
