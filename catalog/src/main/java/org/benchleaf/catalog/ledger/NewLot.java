package org.benchleaf.catalog.ledger;

import java.util.Optional;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;

/// A lot that begins with what is received.
///
/// @param item what it is a lot of; an item of the catalog
/// @param place block and row; may be empty
/// @param ready the week from which it can be taken; empty when it is ready
public record NewLot(ItemKey item, String place, Optional<YearWeek> ready) {}
