package org.benchleaf.app.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.ComparisonWords;
import org.benchleaf.app.service.NameLookup;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Telling;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.search.Match;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;

/// Plants and answers as programs read them.
final class ApiData {
    private final Benchleaf benchleaf;
    private final Wording words;
    private final ComparisonWords comparisons;

    ApiData(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.words = benchleaf.wording();
        this.comparisons = new ComparisonWords(words);
    }

    Map<String, Object> brief(PlantRecord plant) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("key", plant.key().text());
        told.put("name", plant.name().toString());
        plant.commonName(words.language()).ifPresent(name -> told.put("common_name", name));
        told.put("page", LiveLink.of(benchleaf.settings().base(), plant.key()).toString());
        return told;
    }

    Map<String, Object> whole(PlantRecord plant, Telling telling) {
        Map<String, Object> told = brief(plant);
        told.put("retired", plant.retired());
        told.put(
                "synonyms",
                plant.synonyms().stream().map(synonym -> synonym.text()).toList());
        told.put("facts", plant.facts().all().stream().map(ApiData::fact).toList());
        told.put(
                "instead_of",
                benchleaf.insteadWords().replaced(plant).stream()
                        .map(one -> Map.of("name", one.original().text(), "named_by", one.publishers()))
                        .toList());
        told.put(
                "items",
                items(
                        benchleaf
                                .catalog()
                                .stock(List.of(plant.key()))
                                .getOrDefault(plant.key(), PlantStock.none(plant.key())),
                        telling));
        return told;
    }

    private static Map<String, Object> fact(Fact<?> fact) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("attribute", fact.attribute().id());
        told.put("value", fact.text());
        told.put("source", fact.source().text());
        told.put("inherited", fact.inherited());
        return told;
    }

    private List<Map<String, Object>> items(PlantStock stock, Telling telling) {
        YearWeek week = YearWeek.of(benchleaf.today());
        return stock.items().stream()
                .map(item -> new ItemLine(
                        item.key(),
                        item.size(),
                        item.form(),
                        stock.availability(item.key(), week),
                        item.price(),
                        List.of()))
                .map(item -> Feed.item(item, telling))
                .toList();
    }

    /// What was read of a need.
    Map<String, Object> read(NeedReading read) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put(
                "read",
                read.understood().stream()
                        .map(one -> Map.of(
                                "words", one.words(),
                                "wish", words.wish(one.wish().wish())))
                        .toList());
        told.put("not_understood", read.notUnderstood());
        return told;
    }

    Map<String, Object> match(Match match, Telling telling) {
        Map<String, Object> told = brief(match.plant());
        told.put(
                "reasons",
                match.fit().reasons().stream()
                        .map(reason -> reason(reason, telling))
                        .toList());
        told.put("items", items(match.stock(), telling));
        return told;
    }

    private Map<String, Object> reason(Reason reason, Telling telling) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put(
                "verdict",
                switch (reason) {
                    case Reason.Met met -> "met";
                    case Reason.Missed missed -> "missed";
                    case Reason.Unknown unknown -> "unknown";
                });
        told.put("wish", words.wish(reason.wish()));
        told.put("text", words.telling(telling).reason(reason));
        return told;
    }

    Map<String, Object> named(NameLookup.Found found) {
        Map<String, Object> told = brief(found.plant());
        told.put("matched", found.matched());
        told.put("how", found.how().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return told;
    }

    Map<String, Object> substitute(Substitute one, Telling telling) {
        Map<String, Object> told = brief(one.match().plant());
        told.put(
                "differs",
                one.comparison().differs().stream().map(comparisons::sentence).toList());
        told.put(
                "agrees",
                one.comparison().agrees().stream().map(comparisons::point).toList());
        told.put("named_by", one.namedBy());
        told.put("hazards", comparisons.hazards(one));
        told.put("items", items(one.match().stock(), telling));
        return told;
    }
}
