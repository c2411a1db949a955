package org.benchleaf.app.service;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.PriceTier;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.plant.Season;

/// A plant list as it stands with the catalog's facts and stock.
///
/// @param list what was looked at
/// @param lines in the list's order
/// @param remarks what a person should know, the serious ones first
/// @param months what is seen in each month; empty for a month in which nothing is
/// @param totals the sum of what has a price, one a currency
/// @param tiers what the same costs other kinds of customers, in the shop's order
/// @param unpriced lines without a price
public record ListReport(
        PlantList list,
        List<Line> lines,
        List<Remark> remarks,
        Map<Month, List<Seen>> months,
        List<Money> totals,
        List<TierTotal> tiers,
        int unpriced) {
    public ListReport {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
        months = Collections.unmodifiableMap(months);
        totals = List.copyOf(totals);
        tiers = List.copyOf(tiers);
    }

    /// Whether something stands against planting the list as it is.
    public boolean isSound() {
        return remarks.stream().noneMatch(Remark::serious);
    }

    /// Months of the year in which nothing on the list is seen.
    public List<Month> bareMonths() {
        return java.util.Arrays.stream(Month.values())
                .filter(month -> months.getOrDefault(month, List.of()).isEmpty())
                .toList();
    }

    /// What the list costs a kind of customer.
    ///
    /// @param totals one a currency
    public record TierTotal(PriceTier tier, List<Money> totals) {
        public TierTotal {
            totals = List.copyOf(totals);
        }
    }

    /// A line with what the catalog knows of it.
    ///
    /// @param plant empty when the catalog has it no more
    /// @param item the item it is filled from; empty when there is none in that size
    /// @param free how many of that item can be had by the week asked for, other lines of the list taken off
    /// @param total what the line costs
    public record Line(
            ListLine line,
            Optional<PlantRecord> plant,
            PlantStock stock,
            Optional<ItemRecord> item,
            int free,
            Optional<Money> total) {
        /// How many are short; 0 when there are enough.
        public int missing() {
            return Math.max(0, line.quantity() - free);
        }
    }

    /// Something that a person should know.
    ///
    /// @param kind what it is about
    /// @param serious whether it stands against planting or delivering
    /// @param line the number of the line; 0 for the whole list
    /// @param text a sentence
    public record Remark(Kind kind, boolean serious, int line, String text) {}

    /// What a remark is about.
    public enum Kind {
        LAW,
        SITE,
        POLLINATION,
        SHORTAGE,
        SAFETY,
        GAP
    }

    /// A plant in a month.
    ///
    /// @param line the number of the line
    /// @param name of the plant
    /// @param season what is seen of it
    public record Seen(int line, String name, Season season) {}
}
