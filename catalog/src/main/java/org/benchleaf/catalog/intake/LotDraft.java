package org.benchleaf.catalog.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// What a row says of a lot.
///
/// @param place the row
/// @param lot the grower's number for it
/// @param plant the plant by key, when the row gives one
/// @param name the plant by name
/// @param size as sold
/// @param form the shape it is grown into
/// @param where block and row in the nursery
/// @param count 0 or more; becomes a counted entry of the ledger
/// @param ready the week from which it can be taken; empty when it is ready
/// @param price wholesale, each
/// @param conditions what was seen
/// @param seenOn the day of the walk
/// @param gtin trade number
public record LotDraft(
        Place place,
        String lot,
        Optional<PlantKey> plant,
        BotanicalName name,
        StockSize size,
        ItemForm form,
        String where,
        int count,
        Optional<YearWeek> ready,
        Optional<Money> price,
        Set<Condition> conditions,
        Optional<LocalDate> seenOn,
        Optional<Gtin> gtin) {}
