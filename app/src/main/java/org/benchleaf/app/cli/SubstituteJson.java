package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.benchleaf.app.Settings;
import org.benchleaf.app.service.ComparisonWords;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.app.service.OriginalWords;
import org.benchleaf.app.service.ReferencePlants;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Kin;
import org.benchleaf.search.substitute.Offer;
import org.benchleaf.search.substitute.Point;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;

/// Substitutes as JSON; the shape is described in `docs/substitutes.md`.
final class SubstituteJson {
    private final ObjectMapper mapper = new ObjectMapper();
    private final Wording words;
    private final Settings settings;
    private final ComparisonWords comparisons;
    private final OriginalWords originals;

    /// @param indented on many lines, for people to read
    SubstituteJson(Wording words, Settings settings, boolean indented) {
        if (indented) {
            mapper.enable(SerializationFeature.INDENT_OUTPUT);
        }
        this.words = words;
        this.settings = settings;
        this.comparisons = new ComparisonWords(words);
        this.originals = new OriginalWords(words);
    }

    String text(String typed, OriginalFinder.Found found, SubstituteAnswer answer) {
        PlantRecord original = found.plant();
        ObjectNode root = mapper.createObjectNode();
        root.put("read", typed);
        ObjectNode node = root.putObject("original");
        boolean grown = !ReferencePlants.isReference(original);
        if (grown) {
            node.put("key", original.key().text());
        }
        node.put("name", original.name().toString());
        original.commonName(words.language()).ifPresent(name -> node.put("commonName", name));
        node.put("inCatalog", grown);
        node.put("role", originals.role(answer.role(), original.facts()));
        node.put("unwelcome", answer.role().unwelcome());
        ArrayNode others = node.putArray("otherReadings");
        found.others().forEach(other -> others.add(other.name().toString()));
        root.put("revision", answer.revision().number());
        ArrayNode wishes = root.putArray("need");
        for (WeighedWish wish : answer.need().wishes()) {
            wishes.addObject()
                    .put("kind", wish.wish().getClass().getSimpleName())
                    .put("text", words.wish(wish.wish()))
                    .put("weight", wish.weight())
                    .put("fixed", wish.fixed());
        }
        ArrayNode best = root.putArray("substitutes");
        answer.best().forEach(one -> add(best.addObject(), one));
        ObjectNode groups = root.putObject("groups");
        for (Kin kin : Kin.values()) {
            ArrayNode group = groups.putArray(word(kin));
            answer.of(kin).forEach(one -> group.add(one.match().plant().key().text()));
        }
        ArrayNode more = root.putArray("others");
        answer.all().stream().filter(one -> !answer.best().contains(one)).forEach(one -> add(more.addObject(), one));
        ArrayNode passedOver = root.putArray("passedOver");
        answer.passedOver().forEach(plant -> passedOver.add(plant.name().toString()));
        ArrayNode advised = root.putArray("advised");
        answer.advised().forEach(taxon -> advised.add(taxon.text()));
        return written(root);
    }

    /// A line for a name that cannot be answered.
    String refused(String typed, String problem) {
        return written(mapper.createObjectNode().put("read", typed).put("problem", problem));
    }

    private void add(ObjectNode node, Substitute one) {
        PlantRecord plant = one.match().plant();
        node.put("key", plant.key().text());
        node.put("name", plant.name().toString());
        plant.commonName(words.language()).ifPresent(name -> node.put("commonName", name));
        node.put("page", LiveLink.of(settings.base(), plant.key()).toString());
        node.put("group", word(one.kin()));
        points(node.putArray("differs"), one.comparison().differs(), true);
        points(node.putArray("agrees"), one.comparison().agrees(), false);
        ArrayNode better = node.putArray("better");
        one.comparison().better().forEach(point -> better.add(comparisons.aspect(point.aspect())));
        ArrayNode unknown = node.putArray("notKnown");
        one.comparison().unknown().forEach(aspect -> unknown.add(comparisons.aspect(aspect)));
        ArrayNode hazards = node.putArray("hazards");
        comparisons.hazards(one).forEach(hazards::add);
        ArrayNode namedBy = node.putArray("namedBy");
        one.namedBy().forEach(namedBy::add);
        ArrayNode troubles = node.putArray("hostOf");
        one.troubles().forEach(trouble -> troubles.add(trouble.name()));
        comparisons.sale(one).ifPresent(sale -> node.put("sale", sale));
        if (comparisons.isHardinessUnknown(one)) {
            node.put("hardinessKnown", false);
        }
        one.offer().ifPresent(offer -> add(node.putObject("offer"), offer));
        ArrayNode reasons = node.putArray("reasons");
        for (Reason reason : one.match().fit().reasons()) {
            reasons.addObject()
                    .put(
                            "verdict",
                            switch (reason) {
                                case Reason.Met met -> "met";
                                case Reason.Missed missed -> "missed";
                                case Reason.Unknown notKnown -> "unknown";
                            })
                    .put("wish", words.wish(reason.wish()))
                    .put("text", words.reason(reason));
        }
    }

    private void points(ArrayNode array, List<Point> points, boolean sentences) {
        for (Point point : points) {
            array.addObject()
                    .put("aspect", word(point.aspect()))
                    .put("text", sentences ? comparisons.sentence(point) : comparisons.point(point))
                    .put("better", point.better());
        }
    }

    private static void add(ObjectNode node, Offer offer) {
        node.put("item", offer.item().key().toString());
        node.put("size", offer.item().size().toString());
        node.put("form", offer.item().form().term());
        node.put("free", offer.free());
        node.put("asked", offer.asked());
        node.put("enough", !offer.isPartial());
        offer.item()
                .price()
                .ifPresent(price -> node.put("price", price.amount())
                        .put("currency", price.currency().getCurrencyCode()));
        offer.dearer()
                .ifPresent(more ->
                        node.put("dearer", java.math.BigDecimal.valueOf(more, 2).toPlainString()));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String written(ObjectNode root) {
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
