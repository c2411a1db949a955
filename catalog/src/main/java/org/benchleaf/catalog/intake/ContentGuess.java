package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.stock.StockSize;

/// Guesses what a column holds from its cells, where its heading says nothing. Only what can hardly be anything
/// else is guessed: four of five cells must read as it, and nothing else may.
final class ContentGuess {
    private static final int LEAST_CELLS = 3;
    private static final double ENOUGH = 0.8;
    private static final Pattern SPAN = Pattern.compile("(?:zones?\\s*)?\\d{1,2}[ab]?\\s*(?:-|–|to)\\s*\\d{1,2}[ab]?");
    private static final Pattern MONTH = Pattern.compile("(?i).*[a-z]{3}.*");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?(?:\\s*[-–]\\s*\\d+(?:\\.\\d+)?)?");
    private static final Pattern COUNT = Pattern.compile("\\d{1,6}|\\d{1,3}(?:,\\d{3})+");
    private static final Pattern PRICE = Pattern.compile("[$€£]\\s?\\d[\\d,]*(?:\\.\\d{2})?|\\d[\\d,]*\\.\\d{2}");
    /// Zones that are told from months: a plant lives in more zones than it blooms months.
    private static final double WIDE = 3;

    private ContentGuess() {}

    /// The field of a column; empty when its cells say nothing for sure.
    ///
    /// @param cells of one column, blanks too
    /// @param taken fields that other columns hold already
    static Optional<String> field(RowKind rows, List<String> cells, Set<String> taken) {
        List<String> texts = cells.stream().filter(cell -> !cell.isBlank()).toList();
        if (texts.size() < LEAST_CELLS) {
            return Optional.empty();
        }
        List<String> guesses = new ArrayList<>();
        if (!taken.contains(Fields.NAME) && mostly(texts, ContentGuess::isName)) {
            return Optional.of(Fields.NAME);
        }
        if (rows.areStock()) {
            stock(guesses, texts, taken);
        }
        if (rows.arePlants()) {
            plants(guesses, texts, taken);
        }
        List<String> distinct = guesses.stream().distinct().toList();
        return distinct.size() == 1 ? Optional.of(distinct.get(0)) : Optional.empty();
    }

    private static void stock(List<String> guesses, List<String> texts, Set<String> taken) {
        guess(
                guesses,
                taken,
                Fields.SIZE,
                mostly(texts, text -> StockSize.read(text).refusal().isEmpty()));
        guess(
                guesses,
                taken,
                Fields.GTIN,
                mostly(texts, text -> Gtin.read(text).refusal().isEmpty()));
        guess(
                guesses,
                taken,
                Fields.READY_WEEK,
                mostly(texts, text -> YearWeek.read(text).refusal().isEmpty()));
        guess(
                guesses,
                taken,
                Fields.PRICE,
                mostly(texts, text -> PRICE.matcher(text).matches()));
    }

    private static void plants(List<String> guesses, List<String> texts, Set<String> taken) {
        guess(guesses, taken, Attributes.HARDINESS.id(), mostly(texts, ContentGuess::isZones) && areWide(texts));
        guess(guesses, taken, Attributes.BLOOM.id(), mostly(texts, ContentGuess::isMonths));
        boolean lengths = mostly(texts, text -> LengthRange.read(text).refusal().isEmpty());
        guess(guesses, taken, Attributes.HEIGHT.id(), lengths);
        if (guesses.isEmpty()) {
            guess(guesses, taken, Attributes.SPREAD.id(), lengths);
        }
        for (Attribute<?> attribute : Attributes.all()) {
            boolean vocabulary =
                    attribute.codec().read("no such word").refusal().isPresent()
                            && attribute.codec().read("5-9").refusal().isPresent();
            guess(
                    guesses,
                    taken,
                    attribute.id(),
                    vocabulary
                            && mostly(texts, text -> MONTH.matcher(text).matches())
                            && mostly(
                                    texts,
                                    text -> attribute
                                            .codec()
                                            .read(text)
                                            .refusal()
                                            .isEmpty()));
        }
    }

    /// Whether a column of lengths gives bare numbers, which want a unit.
    static boolean areBareNumbers(List<String> cells) {
        List<String> texts = cells.stream().filter(cell -> !cell.isBlank()).toList();
        return !texts.isEmpty() && mostly(texts, text -> NUMBER.matcher(text).matches());
    }

    /// Whether rows seem to be of stock: some column holds sizes, another counts.
    static boolean looksLikeStock(List<List<String>> columns) {
        return columns.stream()
                        .anyMatch(column -> all(
                                column, text -> StockSize.read(text).refusal().isEmpty()))
                && columns.stream()
                        .anyMatch(column ->
                                all(column, text -> COUNT.matcher(text).matches()));
    }

    private static boolean all(List<String> cells, Predicate<String> reads) {
        List<String> texts = cells.stream().filter(cell -> !cell.isBlank()).toList();
        return texts.size() >= LEAST_CELLS && mostly(texts, reads);
    }

    private static void guess(List<String> guesses, Set<String> taken, String field, boolean reads) {
        if (reads && !taken.contains(field)) {
            guesses.add(field);
        }
    }

    private static boolean mostly(List<String> texts, Predicate<String> reads) {
        return texts.stream().filter(reads).count() >= ENOUGH * texts.size();
    }

    private static boolean isName(String text) {
        return NameReader.read(text) instanceof NameReading.Read(var name, var notes)
                && (name.species().isPresent() || name.cultivar().isPresent())
                && notes.size() <= 2;
    }

    private static boolean isZones(String text) {
        return SPAN.matcher(text.strip()).matches()
                && ZoneRange.read(text).refusal().isEmpty();
    }

    private static boolean areWide(List<String> texts) {
        return texts.stream()
                        .flatMap(text -> ZoneRange.read(text).toOptional().stream())
                        .mapToInt(range ->
                                range.warmest().zone() - range.coldest().zone())
                        .average()
                        .orElse(0)
                >= WIDE;
    }

    private static boolean isMonths(String text) {
        return MONTH.matcher(text).matches() && MonthSet.read(text).refusal().isEmpty();
    }
}
