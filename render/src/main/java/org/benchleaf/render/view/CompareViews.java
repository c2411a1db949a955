package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.ComparePage;

/// Puts plants side by side into words: what differs stands before what agrees.
public final class CompareViews {
    private final Wording words;

    public CompareViews(Wording words) {
        this.words = words;
    }

    /// @param plants the heads of the columns
    /// @param differs rows in which they are not all the same
    /// @param agrees rows in which they are
    public record View(List<Plant> plants, List<Row> differs, List<Row> agrees, List<Candidate> candidates) {}

    /// One column.
    ///
    /// @param plain the name without type, for labels
    public record Plant(
            TextLine name, String plain, String common, String path, String key, String without, String remove) {}

    /// One row.
    public record Row(String heading, List<String> cells) {}

    /// A plant that may be meant.
    public record Candidate(TextLine name, String path) {}

    public View view(ComparePage page) {
        List<SheetView> sheets = page.sheets().stream()
                .map(sheet -> WebSheets.view(sheet, words))
                .toList();
        List<Plant> plants = new ArrayList<>();
        for (int at = 0; at < sheets.size(); at++) {
            ComparePage.Chosen chosen = page.plants().get(at);
            String name = page.sheets().get(at).title().botanical().toString();
            plants.add(new Plant(
                    sheets.get(at).nameLine(),
                    name,
                    sheets.get(at).common(),
                    chosen.path(),
                    chosen.key(),
                    chosen.without(),
                    words.text("web.compare.remove", Map.of("name", name))));
        }
        List<Row> rows = rows(sheets);
        return new View(
                plants,
                rows.stream().filter(row -> sheets.size() < 2 || !isSame(row)).toList(),
                rows.stream().filter(row -> sheets.size() > 1 && isSame(row)).toList(),
                page.candidates().stream()
                        .map(one -> new Candidate(Typesetter.line(one.name(), true), one.path()))
                        .toList());
    }

    private static boolean isSame(Row row) {
        return new HashSet<>(row.cells()).size() == 1;
    }

    private List<Row> rows(List<SheetView> sheets) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                words.text("sheet.stock"), sheets.stream().map(this::stock).toList()));
        rows.add(new Row(
                words.text("sheet.cautions"),
                sheets.stream().map(this::cautions).toList()));
        Map<String, List<String>> facts = new LinkedHashMap<>();
        for (int at = 0; at < sheets.size(); at++) {
            int column = at;
            facts(sheets.get(at))
                    .forEach(fact -> facts.computeIfAbsent(
                                    fact.label(), label -> new ArrayList<>(unknown(sheets.size())))
                            .set(column, fact.value()));
        }
        facts.forEach((label, cells) -> rows.add(new Row(label, cells)));
        return rows;
    }

    private List<String> unknown(int columns) {
        return Stream.generate(() -> words.text("web.compare.unknown"))
                .limit(columns)
                .toList();
    }

    private static Stream<SheetView.FactLine> facts(SheetView sheet) {
        return Stream.concat(sheet.columns().stream().flatMap(List::stream), sheet.landscape().stream());
    }

    private String stock(SheetView sheet) {
        String rows = sheet.stock().stream()
                .flatMap(stock -> stock.rows().stream())
                .map(row -> row.size() + ": " + row.ready()
                        + (row.price().isEmpty() ? "" : words.text("list.comma") + row.price()))
                .collect(Collectors.joining("; "));
        return rows.isEmpty() ? words.text("stock.none") : rows;
    }

    private String cautions(SheetView sheet) {
        return sheet.cautions().isEmpty()
                ? words.text("sheet.cautions.none")
                : sheet.cautions().stream().map(SheetView.NoteLine::text).collect(Collectors.joining("; "));
    }
}
