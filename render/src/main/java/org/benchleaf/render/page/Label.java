package org.benchleaf.render.page;

import java.util.Optional;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// A label for a row or a pot.
///
/// @param title names
/// @param size size sold
/// @param form form sold
/// @param place block and row, such as `B4-12`
/// @param lot the lot's number
/// @param price price each, when it is to be shown
/// @param pounds about how heavy it is, when it is more than one person should lift
/// @param link the address in the code
/// @param gtin trade number of the item, when it has one
/// @param trade what its code says in place of the live link, when the shop wants trade numbers in codes
public record Label(
        PlantTitle title,
        Optional<StockSize> size,
        ItemForm form,
        Optional<String> place,
        Optional<String> lot,
        Optional<Money> price,
        Optional<Integer> pounds,
        LiveLink link,
        Optional<Gtin> gtin,
        Optional<DigitalLink> trade) {
    /// A label of an item without a trade number.
    public Label(
            PlantTitle title,
            Optional<StockSize> size,
            ItemForm form,
            Optional<String> place,
            Optional<String> lot,
            Optional<Money> price,
            Optional<Integer> pounds,
            LiveLink link) {
        this(title, size, form, place, lot, price, pounds, link, Optional.empty(), Optional.empty());
    }

    /// The same label with a trade number in its code.
    public Label withTrade(DigitalLink other) {
        return new Label(title, size, form, place, lot, price, pounds, link, gtin, Optional.of(other));
    }
}
