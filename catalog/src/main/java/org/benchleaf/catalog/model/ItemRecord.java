package org.benchleaf.catalog.model;

import java.util.Optional;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// A plant in a size and form: what is counted, priced and labelled.
///
/// @param key permanent
/// @param size as sold
/// @param form the shape it is grown into
/// @param gtin its trade number, when it has one
/// @param price wholesale, each
public record ItemRecord(ItemKey key, StockSize size, ItemForm form, Optional<Gtin> gtin, Optional<Money> price) {}
