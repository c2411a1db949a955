package org.benchleaf.render.page;

/// Who prints: the line at the foot of every page.
///
/// @param name the shop's name, not blank
/// @param addressLine street, place, telephone or web address on one line; may be empty
public record Shop(String name, String addressLine) {
    public Shop {
        name = name.strip();
        addressLine = addressLine.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("a shop has a name");
        }
    }
}
