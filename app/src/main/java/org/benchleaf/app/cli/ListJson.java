package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Month;
import java.util.List;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.Money;

/// A plant list as JSON; the shape is described in `docs/plant-lists.md`.
final class ListJson {
    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Wording words;

    ListJson(Wording words) {
        this.words = words;
    }

    static String names(List<String> names) {
        ObjectMapper mapper = new ObjectMapper();
        ArrayNode array = mapper.createArrayNode();
        names.forEach(array::add);
        return written(mapper, array);
    }

    /// A list that was changed: which, and how often it has been.
    static ObjectNode saved(PlantList list) {
        return Json.object().put("list", list.name()).put("version", list.version());
    }

    static void site(ObjectNode site, ListSite where) {
        where.zone().ifPresent(zone -> site.put("zone", zone.toString()));
        where.light().ifPresent(light -> site.put("light", light.term()));
        where.soil().ifPresent(soil -> site.put("soil", soil.term()));
        where.shipTo().ifPresent(place -> site.put("shipTo", place.toString()));
        where.by().ifPresent(week -> site.put("by", week.toString()));
    }

    String text(ListReport report) {
        ObjectNode root = mapper.createObjectNode();
        root.put("name", report.list().name());
        root.put("version", report.list().version());
        site(root.putObject("site"), report.list().site());
        ArrayNode lines = root.putArray("lines");
        report.lines().forEach(line -> line(lines.addObject(), line));
        amounts(root.putArray("totals"), report.totals());
        ArrayNode tiers = root.putArray("tiers");
        for (ListReport.TierTotal tier : report.tiers()) {
            ObjectNode node = tiers.addObject()
                    .put("tier", tier.tier().name())
                    .put("factor", tier.tier().factor());
            amounts(node.putArray("totals"), tier.totals());
        }
        root.put("linesWithoutPrice", report.unpriced());
        ObjectNode months = root.putObject("months");
        for (Month month : Month.values()) {
            ArrayNode seen = months.putArray(month.name().toLowerCase(java.util.Locale.ROOT));
            report.months()
                    .getOrDefault(month, List.of())
                    .forEach(one -> seen.addObject()
                            .put("line", one.line())
                            .put("name", one.name())
                            .put("season", one.season().term()));
        }
        ArrayNode remarks = root.putArray("remarks");
        report.remarks()
                .forEach(remark -> remarks.addObject()
                        .put("kind", SubstituteJson.word(remark.kind()))
                        .put("serious", remark.serious())
                        .put("line", remark.line())
                        .put("text", remark.text()));
        root.put("sound", report.isSound());
        return written(mapper, root);
    }

    private void line(ObjectNode node, ListReport.Line line) {
        node.put("line", line.line().number());
        node.put("key", line.line().plant().text());
        line.plant().ifPresent(plant -> {
            node.put("name", plant.name().toString());
            plant.commonName(words.language()).ifPresent(common -> node.put("commonName", common));
        });
        node.put("quantity", line.line().quantity());
        node.put("available", line.free());
        node.put("missing", line.missing());
        line.item().ifPresent(item -> {
            node.put("item", item.key().toString());
            node.put("size", item.size().toString());
            node.put("form", item.form().term());
            item.price()
                    .ifPresent(price -> node.put("price", price.amount())
                            .put("currency", price.currency().getCurrencyCode()));
        });
        line.total().ifPresent(total -> node.put("total", total.amount()));
        node.put("worked", line.line().worked());
        node.put("note", line.line().note());
    }

    private static String written(ObjectMapper mapper, com.fasterxml.jackson.databind.JsonNode node) {
        try {
            return mapper.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void amounts(ArrayNode node, List<Money> amounts) {
        amounts.forEach(amount -> node.addObject()
                .put("amount", amount.amount())
                .put("currency", amount.currency().getCurrencyCode()));
    }
}
