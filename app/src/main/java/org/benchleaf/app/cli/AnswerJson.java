package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Settings;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.Relaxation;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.need.Note;
import org.benchleaf.search.need.OtherReading;
import org.benchleaf.search.need.Understood;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.stock.Availability;

/// An answer as JSON; the shape is described in `docs/need-queries.md`.
public final class AnswerJson {
    private final ObjectMapper mapper = new ObjectMapper();
    private final Wording wording;
    private final Settings settings;

    public AnswerJson(Wording wording, Settings settings) {
        this(wording, settings, true);
    }

    /// @param indented on many lines, for people to read
    public AnswerJson(Wording wording, Settings settings, boolean indented) {
        if (indented) {
            mapper.enable(SerializationFeature.INDENT_OUTPUT);
        }
        this.wording = wording;
        this.settings = settings;
    }

    /// @param wishes those of the sentence and others, in the order of the reasons
    public String text(
            String sentence, NeedReading reading, List<WeighedWish> wishes, NeedAnswer answer, YearWeek now) {
        return text(sentence, reading, wishes, answer, now, Optional.empty());
    }

    /// @param wishes those of the sentence and others, in the order of the reasons
    /// @param asOf the shop's time at which stock was looked up
    public String text(
            String sentence,
            NeedReading reading,
            List<WeighedWish> wishes,
            NeedAnswer answer,
            YearWeek now,
            Optional<LocalDateTime> asOf) {
        ObjectNode root = mapper.createObjectNode();
        root.put("need", sentence);
        root.put("revision", answer.revision().number());
        asOf.ifPresent(moment -> root.put("asOf", moment.toString()));
        ArrayNode asked = root.putArray("wishes");
        for (WeighedWish wish : wishes) {
            asked.addObject()
                    .put("kind", wish.wish().getClass().getSimpleName())
                    .put("text", wording.wish(wish.wish()))
                    .put("weight", wish.weight())
                    .put("fixed", wish.fixed())
                    .put("freed", wish.freed());
        }
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
        ArrayNode others = root.putArray("otherReadings");
        for (OtherReading other : reading.others()) {
            ArrayNode meant = others.addObject().put("words", other.words()).putArray("wishes");
            other.wishes().forEach(wish -> meant.add(wording.wish(wish)));
        }
        ArrayNode notes = root.putArray("notes");
        for (Note note : reading.notes()) {
            notes.add(wording.text("need.note." + note.key(), Map.of("words", note.words(), "read", note.readAs())));
        }
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
        ArrayNode loosenings = root.putArray("loosenings");
        for (Loosening loosening : answer.loosenings()) {
            loosenings
                    .addObject()
                    .put("wish", wording.wish(loosening.wish()))
                    .put("to", wording.wish(loosening.loosened()))
                    .put("more", loosening.more());
        }
        root.set("facets", FacetsCommand.json(answer.facets()));
        return write(root);
    }

    ObjectNode object() {
        return mapper.createObjectNode();
    }

    String write(ObjectNode root) {
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
        addReasons(node, match);
        ArrayNode items = node.putArray("items");
        match.stock().items().forEach(item -> add(items.addObject(), match.stock(), item, now));
    }

    /// The reasons of a match, in the order of the wishes.
    void addReasons(ObjectNode node, Match match) {
        ArrayNode reasons = node.putArray("reasons");
        match.fit().reasons().forEach(reason -> add(reasons.addObject(), reason));
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
