package org.benchleaf.render.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// The plants of a job for its client: a cover, the list, the year in months, a sheet a plant.
///
/// @param name of the job
/// @param day as of which stock and prices are told
/// @param site what is known of the place
/// @param lines in the list's order
/// @param totals the sum of what has a price, one a currency
/// @param sheets one a plant, in the order in which they are first listed; may be empty
/// @param shop who prints
public record ListPack(
        String name,
        LocalDate day,
        Site site,
        List<Line> lines,
        List<Money> totals,
        List<PlantSheet> sheets,
        Shop shop) {
    public ListPack {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
        sheets = List.copyOf(sheets);
    }

    /// The same without a sheet a plant.
    public ListPack withoutSheets() {
        return new ListPack(name, day, site, lines, totals, List.of(), shop);
    }

    /// What is known of the place and the day.
    ///
    /// @param to where it goes, for example `US-PA`
    /// @param by the week in which the plants are wanted
    public record Site(
            Optional<HardinessZone> zone,
            Optional<Exposure> light,
            Optional<Moisture> soil,
            Optional<String> to,
            Optional<YearWeek> by) {}

    /// One line.
    ///
    /// @param number of the line in the list
    /// @param plant empty when the catalog has it no more
    /// @param size in which it is bought, when one is set or found
    /// @param form as grown
    /// @param quantity asked for
    /// @param missing how many of them cannot be had
    /// @param each price, when there is one
    /// @param total of the line, when there is a price
    /// @param worked how the quantity was worked out; may be empty
    /// @param note may be empty
    public record Line(
            int number,
            Optional<PlantItems> plant,
            Optional<StockSize> size,
            ItemForm form,
            int quantity,
            int missing,
            Optional<Money> each,
            Optional<Money> total,
            String worked,
            String note) {}
}
