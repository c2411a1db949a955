package org.benchleaf.app.service;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.stock.ItemForm;

/// A plant list as rows of a spreadsheet.
public final class ListTable {
    public static final List<String> HEADINGS = List.of(
            "line",
            "key",
            "name",
            "common_name",
            "item",
            "size",
            "form",
            "quantity",
            "available",
            "missing",
            "price",
            "currency",
            "total",
            "worked",
            "note",
            "remarks");

    private final Wording words;

    public ListTable(Wording words) {
        this.words = words;
    }

    /// One row a line, in the order of [#HEADINGS].
    public List<List<String>> rows(ListReport report) {
        return report.lines().stream().map(line -> row(report, line)).toList();
    }

    private List<String> row(ListReport report, ListReport.Line line) {
        Optional<ItemRecord> item = line.item();
        Optional<Money> price = item.flatMap(ItemRecord::price);
        return List.of(
                Integer.toString(line.line().number()),
                line.line().plant().text(),
                line.plant().map(plant -> plant.name().toString()).orElse(""),
                line.plant()
                        .flatMap(plant -> plant.commonName(words.language()))
                        .orElse(""),
                item.map(one -> one.key().toString()).orElse(""),
                item.map(one -> one.size().toString())
                        .or(() -> line.line().size().map(Object::toString))
                        .orElse(""),
                item.filter(one -> one.form() != ItemForm.REGULAR)
                        .map(one -> one.form().term())
                        .orElse(""),
                Integer.toString(line.line().quantity()),
                Integer.toString(line.free()),
                Integer.toString(line.missing()),
                price.map(Money::amount).orElse(""),
                price.map(one -> one.currency().getCurrencyCode()).orElse(""),
                line.total().map(Money::amount).orElse(""),
                line.line().worked(),
                line.line().note(),
                report.remarks().stream()
                        .filter(remark -> remark.line() == line.line().number())
                        .map(ListReport.Remark::text)
                        .collect(Collectors.joining(" · ")));
    }
}
