package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;

/// A file's headings seen through a column map: where each mapped heading stands, and what does not fit.
final class MappedHeadings {
    private final Map<String, Integer> places = new HashMap<>();
    /// The same by the headings as the map writes them, so that no heading is folded again for every row.
    private final Map<String, Integer> placeOfMapped = new HashMap<>();
    private final Map<String, Column> columnOfField = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final String file;
    private final long row;
    private final List<Integer> nameless = new ArrayList<>();
    private final List<Column> columns;
    private boolean complete = true;

    MappedHeadings(Sheet sheet, ColumnMap map) {
        this.file = sheet.file();
        this.row = sheet.headingRow();
        List<String> headings = sheet.headings();
        Set<String> known = map.headings().stream().map(Headings::folded).collect(Collectors.toSet());
        Set<String> unused = new HashSet<>(known);
        for (int at = 0; at < headings.size(); at++) {
            String heading = headings.get(at);
            String folded = Headings.folded(heading);
            unused.remove(folded);
            if (heading.isEmpty()) {
                nameless.add(at);
            } else if (places.putIfAbsent(folded, at) != null) {
                report(heading, Problem.of("heading.twice", heading), Finding.Outcome.CELL_LEFT_OUT);
            }
        }
        for (String heading : headings) {
            if (!heading.isEmpty() && !known.contains(Headings.folded(heading))) {
                unknown(heading, map, unused);
            }
        }
        for (String mapped : map.headings()) {
            Integer at = places.get(Headings.folded(mapped));
            if (at != null) {
                placeOfMapped.put(mapped, at);
            }
        }
        this.columns = map.columns().stream()
                .filter(column -> column.headings().stream().anyMatch(this::isPresent))
                .toList();
        columns.forEach(column -> columnOfField.putIfAbsent(column.field(), column));
        for (Column column : map.columns()) {
            if (column.required() && column.headings().stream().noneMatch(this::isPresent)) {
                complete = false;
                report(
                        column.heading(),
                        Problem.of("heading.missing", column.heading()).with("present", String.join(", ", headings)),
                        Finding.Outcome.ROW_LEFT_OUT);
            }
        }
    }

    private void unknown(String heading, ColumnMap map, Set<String> unused) {
        Set<String> candidates = map.headings().stream()
                .filter(candidate -> unused.contains(Headings.folded(candidate)))
                .collect(Collectors.toSet());
        Problem problem = Headings.nearest(heading, candidates)
                .map(nearest -> Problem.of("heading.unknown", heading).with("nearest", nearest))
                .orElseGet(() -> Problem.of("heading.unused", heading).with("map", map.id()));
        report(heading, problem, Finding.Outcome.CELL_LEFT_OUT);
    }

    private void report(String heading, Problem problem, Finding.Outcome outcome) {
        findings.add(new Finding(new Place(file, row, Optional.of(heading)), problem, outcome));
    }

    private boolean isPresent(String heading) {
        return places.containsKey(Headings.folded(heading));
    }

    /// Whether every required heading is there; without one no row means anything.
    boolean isComplete() {
        return complete;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /// The map's columns of which the file has at least one heading.
    List<Column> columns() {
        return columns;
    }

    /// The first heading that gives a field; the field's own name when the file has none.
    String heading(String field) {
        return Optional.ofNullable(columnOfField.get(field))
                .map(Column::heading)
                .orElse(field);
    }

    /// Whether the file gives a field at all.
    boolean has(String field) {
        return columnOfField.containsKey(field);
    }

    /// The text of a field; empty when the file lacks it.
    String field(RawRow row, String field) {
        return Optional.ofNullable(columnOfField.get(field))
                .map(column -> cell(row, column.heading()))
                .orElse("");
    }

    /// The text under a heading; empty when the file lacks it.
    String cell(RawRow row, String heading) {
        Integer at = placeOfMapped.get(heading);
        return at == null ? "" : row.cells().get(at);
    }

    /// Text in a column that has no heading.
    Optional<String> textWithoutHeading(RawRow row) {
        return nameless.stream()
                .map(at -> row.cells().get(at))
                .filter(text -> !text.isEmpty())
                .findFirst();
    }
}
