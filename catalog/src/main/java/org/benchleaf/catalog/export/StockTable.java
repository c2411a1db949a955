package org.benchleaf.catalog.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.intake.Column;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.stock.ItemForm;

/// A plant's lots as rows of the own format.
final class StockTable {
    private StockTable() {}

    static List<String> headings() {
        return ColumnMaps.ownStock().columns().stream()
                .map(column -> column.headings().get(0))
                .toList();
    }

    static List<List<String>> rows(PlantRecord plant, PlantStock stock) {
        List<List<String>> rows = new ArrayList<>();
        for (LotRecord lot : stock.lots()) {
            Optional<ItemRecord> item = stock.items().stream()
                    .filter(each -> each.key().equals(lot.item()))
                    .findFirst();
            item.ifPresent(found -> rows.add(cells(plant, found, lot)));
        }
        return rows;
    }

    private static List<String> cells(PlantRecord plant, ItemRecord item, LotRecord lot) {
        List<String> cells = new ArrayList<>();
        for (Column column : ColumnMaps.ownStock().columns()) {
            cells.add(
                    switch (column.field()) {
                        case "key" -> plant.key().text();
                        case "lot" -> lot.lot();
                        case "name" -> plant.name().toString();
                        case "size" -> item.size().toString();
                        case "form" ->
                            item.form() == ItemForm.REGULAR ? "" : item.form().term();
                        case "place" -> lot.place();
                        case "count" -> Integer.toString(lot.count());
                        case "ready_week" -> lot.ready().map(Object::toString).orElse("");
                        case "price" -> item.price().map(Object::toString).orElse("");
                        case "condition" -> Term.write(lot.conditions());
                        case "seen_on" -> lot.seenOn().map(Object::toString).orElse("");
                        case "gtin" -> item.gtin().map(Object::toString).orElse("");
                        default -> "";
                    });
        }
        return cells;
    }
}
