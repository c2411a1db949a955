package org.benchleaf.catalog.intake;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Source;
import org.jspecify.annotations.Nullable;

/// The saved form of a column map, JSON, read strictly: a member nobody knows is an error with its line, not a wish.
public final class MapFile {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultSetterInfo(JsonSetter.Value.forContentNulls(Nulls.FAIL))
            .build();

    private MapFile() {}

    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    private record Form(
            String id,
            String rows,
            String rank,
            @Nullable String source,
            @JsonInclude(JsonInclude.Include.ALWAYS) List<ColumnForm> columns,
            @Nullable List<String> passedOver) {}

    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    private record ColumnForm(
            @Nullable String heading,
            @Nullable List<String> headings,
            String field,
            @Nullable Boolean required,
            @Nullable String unit,
            @Nullable String language,
            @Nullable String join,
            @Nullable Map<String, String> words,
            @Nullable List<CaseForm> cases,
            @Nullable Boolean everyCase,
            @Nullable String approximation) {}

    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    private record CaseForm(
            @Nullable Map<String, List<String>> when,
            @Nullable Map<String, List<String>> unless,
            @JsonInclude(JsonInclude.Include.ALWAYS) String value) {}

    /// Reads a map.
    ///
    /// @return refused with `map.unreadable` (with `line`, `column` and the parser's `reason`), `map.incomplete`,
    ///     `map.field`, `map.unit` or `map.twice`
    public static Reading<ColumnMap> read(String json) {
        try {
            return checked(JSON.readValue(json, Form.class));
        } catch (JsonProcessingException wrong) {
            Problem problem = Problem.of("map.unreadable", wrong.getOriginalMessage());
            return new Reading.Refused<>(
                    wrong.getLocation() == null
                            ? problem
                            : problem.with(
                                            "line",
                                            Integer.toString(wrong.getLocation().getLineNr()))
                                    .with(
                                            "column",
                                            Integer.toString(wrong.getLocation().getColumnNr())));
        }
    }

    private static Reading<ColumnMap> checked(@Nullable Form form) {
        if (form == null || form.id == null || form.rows == null || form.rank == null || form.columns == null) {
            return Reading.refused("map.incomplete", "id, rows, rank, columns");
        }
        Optional<RowKind> rows = constant(RowKind.values(), form.rows);
        Optional<ImportPlan.Rank> rank = constant(ImportPlan.Rank.values(), form.rank);
        if (rows.isEmpty() || rank.isEmpty()) {
            return Reading.refused("map.incomplete", rows.isEmpty() ? "rows" : "rank");
        }
        Set<String> seen = new HashSet<>();
        for (ColumnForm column : form.columns) {
            if (column == null || column.field == null || !Fields.isKnown(rows.get(), column.field)) {
                return Reading.refused("map.field", column == null ? "" : String.valueOf(column.field));
            }
            if (headings(column).isEmpty()) {
                return Reading.refused("map.incomplete", column.field);
            }
            if (column.unit != null && !CellTexts.isUnit(column.unit)) {
                return new Reading.Refused<>(
                        Problem.of("map.unit", column.unit).with("accepted", String.join(", ", CellTexts.UNITS)));
            }
            String taken = column.field + " " + Headings.folded(headings(column).get(0));
            if (!seen.add(taken)) {
                return Reading.refused("map.twice", headings(column).get(0));
            }
        }
        return Reading.of(new ColumnMap(
                form.id,
                rows.get(),
                rank.get(),
                Optional.ofNullable(form.source).filter(text -> !text.isBlank()).map(Source::new),
                form.columns.stream().map(MapFile::column).toList(),
                Set.copyOf(form.passedOver == null ? List.of() : form.passedOver)));
    }

    private static <E extends Enum<E>> Optional<E> constant(E[] values, String name) {
        return List.of(values).stream()
                .filter(value -> value.name().replace('_', '-').equalsIgnoreCase(name))
                .findFirst();
    }

    private static List<String> headings(ColumnForm form) {
        if (form.headings != null) {
            return form.headings;
        }
        return form.heading == null ? List.of() : List.of(form.heading);
    }

    private static Column column(ColumnForm form) {
        return new Column(
                headings(form),
                form.field,
                form.required != null && form.required,
                Optional.ofNullable(form.unit),
                form.language == null ? Locale.ENGLISH : Locale.forLanguageTag(form.language),
                form.join == null ? "" : form.join,
                form.words == null ? Map.of() : form.words,
                (form.cases == null ? List.<CaseForm>of() : form.cases)
                        .stream()
                                .map(each -> new ColumnCase(
                                        each.when == null ? Map.of() : each.when,
                                        each.unless == null ? Map.of() : each.unless,
                                        each.value == null ? "" : each.value))
                                .toList(),
                form.everyCase != null && form.everyCase,
                form.approximation == null ? "" : form.approximation);
    }

    /// Writes a map in the form that [#read] reads back.
    public static String write(ColumnMap map) {
        try {
            return JSON.writeValueAsString(new Form(
                            map.id(),
                            map.rows().name().replace('_', '-').toLowerCase(Locale.ROOT),
                            map.rank().name().toLowerCase(Locale.ROOT),
                            map.source().map(Source::text).orElse(null),
                            map.columns().stream().map(MapFile::form).toList(),
                            map.passedOver().stream().sorted().toList()))
                    + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a column map did not turn into JSON", impossible);
        }
    }

    private static ColumnForm form(Column column) {
        boolean single = column.headings().size() == 1;
        return new ColumnForm(
                single ? column.heading() : null,
                single ? null : column.headings(),
                column.field(),
                column.required() ? Boolean.TRUE : null,
                column.unit().orElse(null),
                column.language().equals(Locale.ENGLISH)
                        ? null
                        : column.language().toLanguageTag(),
                column.join(),
                new TreeMap<>(column.words()),
                column.cases().stream()
                        .map(each ->
                                new CaseForm(new TreeMap<>(each.when()), new TreeMap<>(each.unless()), each.value()))
                        .toList(),
                column.everyCase() ? Boolean.TRUE : null,
                column.approximation());
    }
}
