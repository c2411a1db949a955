package org.benchleaf.catalog.prints;

import java.util.Optional;
import org.benchleaf.shared.code.PlantKey;

/// One thing that was printed: a card, a label, a sheet.
///
/// @param document what kind, such as `card`
/// @param format in which size or on which paper, such as `large` or `letter-30`
/// @param plant whom it is about
/// @param item number of the item, when it is about one
/// @param detail what else tells it from others of the item, such as a lot; may be empty
/// @param name as it was printed
/// @param price as it was printed, `21.50 USD`; empty when it shows none
/// @param address where its code leads
/// @param digest of everything it says; another one says something else
/// @param copies 1 or more
/// @throws IllegalArgumentException when there are no copies
public record PrintEntry(
        String document,
        String format,
        PlantKey plant,
        Optional<Integer> item,
        String detail,
        String name,
        Optional<String> price,
        String address,
        String digest,
        int copies) {
    public PrintEntry {
        if (copies < 1) {
            throw new IllegalArgumentException("what is printed is printed at least once; got " + copies);
        }
    }

    /// The address up to its path: the server on which its code depends.
    public String base() {
        int path = address.indexOf('/', address.indexOf("//") + 2);
        return path < 0 ? address : address.substring(0, path);
    }

    /// Whether both are prints of the same thing, whatever they say.
    public boolean sameThing(PrintEntry other) {
        return document.equals(other.document)
                && format.equals(other.format)
                && plant.equals(other.plant)
                && item.equals(other.item)
                && detail.equals(other.detail);
    }
}
