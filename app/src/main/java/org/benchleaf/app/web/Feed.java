package org.benchleaf.app.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.AvailabilityBook;
import org.benchleaf.content.Telling;
import org.benchleaf.render.page.AvailabilityPage;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.stock.Availability;

/// What can be had, item by item, for spreadsheets and programs. The columns are described in `docs/api.md`.
final class Feed {
    static final List<String> COLUMNS = List.of(
            "plant", "name", "common_name", "item", "size", "form", "now", "from", "then", "price", "currency", "page");

    private final Benchleaf benchleaf;

    Feed(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
    }

    /// With a mark for spreadsheet programs that it is UTF-8, and no cell that they take for a formula.
    byte[] csv(AvailabilityBook.Book book, Telling telling) {
        StringBuilder text = new StringBuilder("\uFEFF");
        text.append(String.join(",", COLUMNS)).append("\r\n");
        rows(book, telling).forEach(row -> {
            for (int at = 0; at < COLUMNS.size(); at++) {
                text.append(at == 0 ? "" : ",").append(cell(row.getOrDefault(COLUMNS.get(at), "")));
            }
            text.append("\r\n");
        });
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(Object value) {
        String text = value.toString();
        if (value instanceof String && !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0) {
            text = "'" + text;
        }
        return text.matches("(?s).*[\",\r\n].*") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }

    Map<String, Object> json(AvailabilityBook.Book book, Telling telling) {
        Map<String, Object> feed = new LinkedHashMap<>();
        feed.put("revision", book.revision().number());
        feed.put("items", rows(book, telling));
        return feed;
    }

    private List<Map<String, Object>> rows(AvailabilityBook.Book book, Telling telling) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (AvailabilityPage.Line line : book.lines().values()) {
            for (ItemLine item : line.items()) {
                rows.add(row(line, item, telling));
            }
        }
        return rows;
    }

    private Map<String, Object> row(AvailabilityPage.Line line, ItemLine item, Telling telling) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("plant", line.key().text());
        row.put("name", line.name().toString());
        row.put("common_name", line.common());
        row.putAll(item(item, telling));
        row.put("page", LiveLink.of(benchleaf.settings().base(), item.key()).toString());
        return row;
    }

    /// One item, as the feed and the API tell it.
    static Map<String, Object> item(ItemLine item, Telling telling) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("item", item.key().toString());
        row.put("size", item.size().toString());
        row.put("form", item.form().term());
        switch (item.availability()) {
            case Availability.InStock(int count) -> row.put("now", told(count, telling));
            case Availability.From(var week, int count) -> {
                row.put("now", 0);
                row.put("from", week.monday().toString());
                row.put("then", told(count, telling));
            }
            case Availability.SoldOut() -> row.put("now", 0);
            case Availability.Withdrawn() -> row.put("now", 0);
        }
        item.price().flatMap(telling::price).ifPresent(price -> {
            row.put("price", price.amount());
            row.put("currency", price.currency().getCurrencyCode());
        });
        return row;
    }

    /// A number, or `plenty`, `few`, `some` where the shop tells no more.
    private static Object told(int count, Telling telling) {
        return switch (telling.counts()) {
            case EXACT -> count;
            case COARSE -> count < Telling.FEW ? "few" : "plenty";
            case HIDDEN -> "some";
        };
    }
}
