package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.service.Promises;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.model.ItemOutlook;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;

/// The ledger and what can be promised, as JSON; the shape is described in `docs/stock.md`.
final class StockJson {
    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final ZoneId zone;

    StockJson(ZoneId zone) {
        this.zone = zone;
    }

    String entry(LedgerEntry entry, Balance lot, boolean again, Instant now) {
        ObjectNode root = mapper.createObjectNode();
        root.put("outcome", again ? "already-applied" : "applied");
        root.put("key", entry.key());
        root.put("lot", entry.lot());
        root.put("kind", entry.event().kind().term());
        root.put("stated", entry.event().stated());
        root.put("who", entry.who());
        root.put("why", entry.why());
        balance(root, lot);
        root.put("asOf", time(now));
        return text(root);
    }

    String promise(ItemKey item, List<Promises.Part> parts, Instant now) {
        ObjectNode root = mapper.createObjectNode();
        root.put("item", item.toString());
        root.put("number", parts.stream().mapToInt(part -> part.entry().event().stated()).sum());
        ArrayNode holds = root.putArray("holds");
        for (Promises.Part part : parts) {
            ObjectNode node = holds.addObject()
                    .put("outcome", part.writtenBefore() ? "already-applied" : "applied")
                    .put("key", part.entry().key())
                    .put("lot", part.entry().lot())
                    .put("stated", part.entry().event().stated());
            balance(node, part.lot());
        }
        root.put("asOf", time(now));
        return text(root);
    }

    private static void balance(ObjectNode node, Balance lot) {
        node.put("count", lot.count()).put("held", lot.held()).put("free", lot.free());
    }

    String history(LotRecord lot, List<Hold> holds, List<LedgerLine> lines, Instant now) {
        ObjectNode root = mapper.createObjectNode();
        lot(root, lot);
        root.put("item", lot.item().toString());
        root.put("asOf", time(now));
        ArrayNode held = root.putArray("holds");
        for (Hold hold : holds) {
            ObjectNode node = held.addObject()
                    .put("key", hold.key())
                    .put("quantity", hold.quantity())
                    .put("who", hold.who())
                    .put("why", hold.why());
            hold.until().ifPresent(until -> node.put("until", time(until)));
        }
        ArrayNode entries = root.putArray("entries");
        lines.forEach(line -> line(entries.addObject(), line));
        return text(root);
    }

    private void line(ObjectNode node, LedgerLine line) {
        node.put("number", line.number())
                .put("kind", line.kind().term())
                .put("stated", line.stated())
                .put("change", line.change())
                .put("count", line.count());
        line.hold().ifPresent(hold -> node.put("hold", hold));
        line.until().ifPresent(until -> node.put("until", time(until)));
        line.otherLot().ifPresent(other -> node.put("otherLot", other));
        if (!line.detail().isEmpty()) {
            node.put("detail", line.detail());
        }
        node.put("happenedAt", time(line.happenedAt()))
                .put("enteredAt", time(line.enteredAt()))
                .put("who", line.who())
                .put("why", line.why());
        line.key().ifPresent(key -> node.put("key", key));
    }

    String availability(
            PlantRecord plant,
            PlantStock stock,
            List<ItemRecord> items,
            Optional<YearWeek> by,
            YearWeek week,
            Instant now) {
        ObjectNode root = mapper.createObjectNode();
        root.put("plant", plant.key().text());
        root.put("name", plant.name().toString());
        items(root, stock, items, by, week, now);
        return text(root);
    }

    /// Items and their lots, and as of when.
    void items(
            ObjectNode root,
            PlantStock stock,
            List<ItemRecord> items,
            Optional<YearWeek> by,
            YearWeek week,
            Instant now) {
        root.put("asOf", time(now));
        ArrayNode array = root.putArray("items");
        LocalDate today = LocalDate.ofInstant(now, zone);
        for (ItemRecord item : items) {
            ObjectNode node = array.addObject();
            node.put("key", item.key().toString())
                    .put("size", item.size().toString())
                    .put("form", item.form().term());
            item.price()
                    .ifPresent(price -> node.put("price", price.amount())
                            .put("currency", price.currency().getCurrencyCode()));
            outlook(node, stock.outlook(item.key(), week), today);
            by.ifPresent(asked -> node.put("by", asked.toString()).put("freeBy", stock.freeBy(item.key(), asked)));
            ArrayNode lots = node.putArray("lots");
            stock.lotsOf(item.key()).forEach(lot -> lot(lots.addObject(), lot));
        }
    }

    private static void outlook(ObjectNode node, ItemOutlook outlook, LocalDate today) {
        balance(node, new Balance(outlook.count(), outlook.held()));
        node.put("free", outlook.free());
        ArrayNode coming = node.putArray("coming");
        for (ItemOutlook.Coming crop : outlook.coming()) {
            coming.addObject()
                    .put("week", crop.week().toString())
                    .put("more", crop.more())
                    .put("total", crop.total());
        }
        outlook.seen().ifPresent(seen -> {
            ObjectNode look = node.putObject("seen");
            look.put("day", seen.day().toString())
                    .put("daysAgo", ChronoUnit.DAYS.between(seen.day(), today))
                    .put("lot", seen.lot());
            ArrayNode conditions = look.putArray("conditions");
            seen.conditions().stream().sorted().map(Condition::term).forEach(conditions::add);
        });
    }

    private static void lot(ObjectNode node, LotRecord lot) {
        node.put("lot", lot.lot()).put("place", lot.place());
        lot.ready().ifPresent(week -> node.put("ready", week.toString()));
        node.put("count", lot.count()).put("held", lot.held()).put("free", lot.free());
        lot.seenOn().ifPresent(day -> {
            node.put("seenOn", day.toString());
            ArrayNode conditions = node.putArray("conditions");
            lot.conditions().stream().sorted().map(Condition::term).forEach(conditions::add);
        });
    }

    private String time(Instant moment) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                moment.truncatedTo(ChronoUnit.SECONDS).atZone(zone));
    }

    private String text(ObjectNode root) {
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
