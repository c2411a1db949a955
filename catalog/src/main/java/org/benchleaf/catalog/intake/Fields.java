package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attributes;

/// The fields of a row beside a plant's attributes.
final class Fields {
    static final String KEY = "key";
    static final String NAME = "name";
    static final String COMMON_NAMES = "common_names";
    static final String SYNONYMS = "synonyms";
    static final String SOURCE = "source";
    static final String FACT_SOURCES = "fact_sources";
    static final String RANK = "rank";

    static final String LOT = "lot";
    static final String SIZE = "size";
    static final String FORM = "form";
    static final String PLACE = "place";
    static final String COUNT = "count";
    static final String READY_WEEK = "ready_week";
    static final String PRICE = "price";
    static final String CONDITION = "condition";
    static final String SEEN_ON = "seen_on";
    static final String GTIN = "gtin";

    private static final Set<String> OF_PLANTS = Set.of(KEY, NAME, COMMON_NAMES, SYNONYMS, SOURCE, FACT_SOURCES, RANK);
    private static final Set<String> OF_STOCK =
            Set.of(KEY, NAME, LOT, SIZE, FORM, PLACE, COUNT, READY_WEEK, PRICE, CONDITION, SEEN_ON, GTIN);

    private Fields() {}

    static boolean isKnown(RowKind rows, String field) {
        return switch (rows) {
            case PLANTS -> OF_PLANTS.contains(field) || Attributes.byId(field).isPresent();
            case STOCK -> OF_STOCK.contains(field);
            case PLANTS_AND_STOCK -> isKnown(RowKind.PLANTS, field) || isKnown(RowKind.STOCK, field);
        };
    }

    /// Every field that a column may hold, by name.
    static List<String> all(RowKind rows) {
        Stream<String> own = (rows == RowKind.PLANTS ? OF_PLANTS : OF_STOCK).stream();
        Stream<String> facts =
                rows == RowKind.PLANTS ? Attributes.all().stream().map(attribute -> attribute.id()) : Stream.empty();
        return Stream.concat(own, facts).distinct().sorted().toList();
    }
}
