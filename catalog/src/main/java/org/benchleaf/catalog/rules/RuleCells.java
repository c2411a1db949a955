package org.benchleaf.catalog.rules;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleDates;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.SaleStanding;

/// A rule as texts, one a column: how it stands in a file and in the database.
final class RuleCells {
    private static final int LONGEST = 400;

    private RuleCells() {}

    /// What keeps a row from being a rule.
    static final class Unreadable extends Exception {
        private final transient RuleColumn column;
        private final transient Problem problem;

        Unreadable(RuleColumn column, Problem problem) {
            super(column + " " + problem.key());
            this.column = column;
            this.problem = problem;
        }

        RuleColumn column() {
            return column;
        }

        Problem problem() {
            return problem;
        }
    }

    /// @throws Unreadable naming the first cell that has no meaning
    static SaleRule read(Map<RuleColumn, String> cells) throws Unreadable {
        for (RuleColumn column : RuleColumn.values()) {
            String cell = cells.getOrDefault(column, "");
            if (column.isRequired() && cell.isBlank()) {
                throw new Unreadable(column, Problem.of("text.empty", cell));
            }
            if (cell.length() > LONGEST || cell.chars().anyMatch(c -> c < ' ')) {
                throw new Unreadable(
                        column,
                        Problem.of("rules.long", cell.substring(0, Math.min(80, cell.length())))
                                .with("longest", Integer.toString(LONGEST)));
            }
        }
        String covers = text(cells, RuleColumn.COVERS);
        return new SaleRule(
                text(cells, RuleColumn.ID),
                text(cells, RuleColumn.KIND).isEmpty()
                        ? RuleKind.SALE
                        : ok(RuleColumn.KIND, Term.read(RuleKind.class, text(cells, RuleColumn.KIND))),
                ok(RuleColumn.JURISDICTION, RuleArea.read(text(cells, RuleColumn.JURISDICTION))),
                name(RuleColumn.TAXON, text(cells, RuleColumn.TAXON)),
                names(text(cells, RuleColumn.ALSO_NAMED)),
                covers(covers, "cultivars"),
                covers(covers, "hybrids"),
                ok(RuleColumn.STANDING, Term.read(SaleStanding.class, text(cells, RuleColumn.STANDING))),
                dates(cells),
                Exemption.readList(text(cells, RuleColumn.EXEMPT)),
                text(cells, RuleColumn.NOTICE),
                new Source(text(cells, RuleColumn.SOURCE)),
                day(cells, RuleColumn.COMPILED_ON).orElseThrow());
    }

    static Map<RuleColumn, String> write(SaleRule rule) {
        Map<RuleColumn, String> cells = new EnumMap<>(RuleColumn.class);
        cells.put(RuleColumn.ID, rule.id());
        cells.put(RuleColumn.KIND, rule.kind().term());
        cells.put(RuleColumn.JURISDICTION, rule.area().toString());
        cells.put(RuleColumn.TAXON, rule.taxon());
        cells.put(RuleColumn.ALSO_NAMED, String.join("; ", rule.alsoNamed()));
        cells.put(RuleColumn.COVERS, covered(rule));
        cells.put(RuleColumn.STANDING, rule.standing().term());
        cells.put(RuleColumn.LISTED, day(rule.dates().listed()));
        cells.put(RuleColumn.RECEIPT_FROM, day(rule.dates().receipt()));
        cells.put(RuleColumn.SALE_FROM, day(rule.dates().sale()));
        cells.put(RuleColumn.UNTIL, day(rule.dates().until()));
        cells.put(RuleColumn.EXEMPT, Exemption.write(rule.exempt()));
        cells.put(RuleColumn.NOTICE, rule.notice());
        cells.put(RuleColumn.SOURCE, rule.source().text());
        cells.put(RuleColumn.COMPILED_ON, rule.compiledOn().toString());
        return cells;
    }

    private static boolean covers(String cell, String what) throws Unreadable {
        if (!cell.matches("(?i)|none|(cultivars|hybrids)(\\s*;\\s*(cultivars|hybrids))*")) {
            throw new Unreadable(
                    RuleColumn.COVERS, Problem.of("term.unknown", cell).with("accepted", "cultivars, hybrids, none"));
        }
        return cell.isEmpty() || cell.toLowerCase(java.util.Locale.ROOT).contains(what);
    }

    private static String covered(SaleRule rule) {
        if (rule.cultivars()) {
            return rule.hybrids() ? "" : "cultivars";
        }
        return rule.hybrids() ? "hybrids" : "none";
    }

    private static RuleDates dates(Map<RuleColumn, String> cells) throws Unreadable {
        try {
            return new RuleDates(
                    day(cells, RuleColumn.LISTED),
                    day(cells, RuleColumn.RECEIPT_FROM),
                    day(cells, RuleColumn.SALE_FROM),
                    day(cells, RuleColumn.UNTIL));
        } catch (IllegalArgumentException upsideDown) {
            throw new Unreadable(
                    RuleColumn.RECEIPT_FROM,
                    Problem.of("rules.dates", text(cells, RuleColumn.RECEIPT_FROM))
                            .with("sale", text(cells, RuleColumn.SALE_FROM)));
        }
    }

    private static Optional<LocalDate> day(Map<RuleColumn, String> cells, RuleColumn column) throws Unreadable {
        String cell = text(cells, column);
        try {
            return cell.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(cell));
        } catch (DateTimeParseException noDay) {
            throw new Unreadable(column, Problem.of("rules.day", cell));
        }
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    private static List<String> names(String cell) throws Unreadable {
        List<String> pieces = Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
        for (String piece : pieces) {
            name(RuleColumn.ALSO_NAMED, piece);
        }
        return pieces;
    }

    private static String name(RuleColumn column, String text) throws Unreadable {
        if (NameReader.read(text).known().isEmpty()) {
            throw new Unreadable(column, Problem.of("name.unknown", text));
        }
        return text;
    }

    private static <T> T ok(RuleColumn column, Reading<T> reading) throws Unreadable {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Unreadable(column, problem);
        };
    }

    private static String text(Map<RuleColumn, String> cells, RuleColumn column) {
        return cells.getOrDefault(column, "").strip();
    }
}
