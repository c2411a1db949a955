package org.benchleaf.render.page;

import java.util.Optional;
import org.benchleaf.render.picture.Logo;

/// Who prints: the line at the foot of every page, and the logo at the head of those that have room for it.
///
/// @param name the shop's name, not blank
/// @param addressLine street, place, telephone or web address on one line; may be empty
/// @param logo when it has one
public record Shop(String name, String addressLine, Optional<Logo> logo) {
    public Shop {
        name = name.strip();
        addressLine = addressLine.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("a shop has a name");
        }
    }

    /// A shop without a logo.
    public Shop(String name, String addressLine) {
        this(name, addressLine, Optional.empty());
    }
}
