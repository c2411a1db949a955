package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.service.ListReport.Line;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;

/// The hardest plants as the list of a job: numbers that are long, notes that are long, and more than there are.
final class ContactList {
    private static final int QUANTITY = 12_500;
    private static final String NAME = "Courtyard and parking lots of the school at the old mill, second phase";
    private static final String WORKED = "12,500 sq ft at 18 in, triangular, 5 % more";
    private static final String NOTE =
            "In drifts of seven and nine along the north wall; not before the irrigation is in";

    private ContactList() {}

    static ListReport of(List<PlantRecord> plants, PrintStock stock) {
        PlantList list = PlantList.empty(NAME, ListSite.UNKNOWN);
        List<Line> lines = new ArrayList<>();
        for (PlantRecord plant : plants) {
            Optional<ItemRecord> item = stock.item(plant, Optional.empty());
            int number = lines.size() + 1;
            boolean wordy = number % 2 == 1;
            ListLine line = new ListLine(
                    number, plant.key(), item.map(ItemRecord::size), QUANTITY, wordy ? WORKED : "", wordy ? NOTE : "");
            lines.add(new Line(
                    line,
                    Optional.of(plant),
                    stock.of(plant),
                    item,
                    QUANTITY / number,
                    item.flatMap(ItemRecord::price).map(price -> ListService.times(price, QUANTITY))));
        }
        return new ListReport(
                list,
                lines,
                List.of(),
                Map.of(),
                ListService.sums(lines.stream().flatMap(line -> line.total().stream())),
                List.of(),
                0);
    }
}
