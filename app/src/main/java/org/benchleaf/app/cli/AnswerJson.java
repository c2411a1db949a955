package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.benchleaf.app.Settings;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.Relaxation;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.need.Understood;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.stock.Availability;

/// An answer as JSON; the shape is described in `docs/need-queries.md`.
public final class AnswerJson {
    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Wording wording;
    private final Settings settings;

    public AnswerJson(Wording wording, Settings settings) {
        this.wording = wording;
        this.settings = settings;
    }

    public String text(NeedReading reading, NeedAnswer answer, YearWeek now) {
        ObjectNode root = mapper.createObjectNode();
        root.put("revision", answer.revision().number());
        ArrayNode understood = root.putArray("understood");
        for (Understood one : reading.understood()) {
            understood
                    .addObject()
                    .put("words", one.words())
                    .put("wish", wording.wish(one.wish().wish()))
                    .put("weight", one.wish().weight())
                    .put("fixed", one.wish().fixed());
        }
        ArrayNode notUnderstood = root.putArray("notUnderstood");
        reading.notUnderstood().forEach(notUnderstood::add);
        root.put("total", answer.total());
        root.put("meetAll", answer.meetAll());
        root.put("missNone", answer.missNone());
        ArrayNode matches = root.putArray("matches");
        answer.matches().forEach(match -> add(matches.addObject(), match, now));
        ArrayNode relaxations = root.putArray("relaxations");
        for (Relaxation relaxation : answer.relaxations()) {
            ObjectNode node = relaxations.addObject();
            ArrayNode giveUp = node.putArray("giveUp");
            relaxation.giveUp().forEach(wish -> giveUp.add(wording.wish(wish)));
            node.put("more", relaxation.more());
        }
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void add(ObjectNode node, Match match, YearWeek now) {
        node.put("key", match.plant().key().text());
        node.put("name", match.plant().name().toString());
        match.plant().commonName(wording.language()).ifPresent(name -> node.put("commonName", name));
        node.put("page", LiveLink.of(settings.base(), match.plant().key()).toString());
        ArrayNode reasons = node.putArray("reasons");
        match.fit().reasons().forEach(reason -> add(reasons.addObject(), reason));
        ArrayNode items = node.putArray("items");
        match.stock().items().forEach(item -> add(items.addObject(), match.stock(), item, now));
    }

    private void add(ObjectNode node, Reason reason) {
        node.put(
                "verdict",
                switch (reason) {
                    case Reason.Met met -> "met";
                    case Reason.Missed missed -> "missed";
                    case Reason.Unknown unknown -> "unknown";
                });
        node.put("wish", wording.wish(reason.wish()));
        node.put("text", wording.reason(reason));
        wording.sourceOf(reason).map(Source::text).ifPresent(source -> node.put("source", source));
    }

    private static void add(ObjectNode node, PlantStock stock, ItemRecord item, YearWeek now) {
        node.put("key", item.key().toString());
        node.put("size", item.size().toString());
        node.put("form", item.form().term());
        item.price()
                .ifPresent(price -> node.put("price", price.amount())
                        .put("currency", price.currency().getCurrencyCode()));
        switch (stock.availability(item.key(), now)) {
            case Availability.InStock(int count) -> node.put("now", count);
            case Availability.From(YearWeek week, int count) ->
                node.put("now", 0).put("from", week.toString()).put("then", count);
            case Availability.SoldOut() -> node.put("now", 0);
            case Availability.Withdrawn() -> node.put("now", 0).put("withdrawn", true);
        }
    }
}
