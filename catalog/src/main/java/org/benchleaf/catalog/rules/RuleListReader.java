package org.benchleaf.catalog.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.intake.Finding;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.catalog.intake.RawRow;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.shared.Problem;

/// Reads a list of sale rules from an open file; every row becomes a rule or a finding.
public final class RuleListReader {
    private RuleListReader() {}

    /// @param sheet an open file; its rows are read to the end
    public static RuleList read(Sheet sheet) {
        Map<RuleColumn, Integer> places = places(sheet.headings());
        List<Finding> findings = new ArrayList<>(sheet.findings());
        List<SaleRule> rules = new ArrayList<>();
        for (RuleColumn column : RuleColumn.values()) {
            if (column.isRequired() && !places.containsKey(column)) {
                findings.add(finding(sheet, 1, column, Problem.of("heading.missing", column.heading())));
            }
        }
        Set<String> ids = new HashSet<>();
        Iterator<RawRow> rows = sheet.rows().iterator();
        while (rows.hasNext()
                && findings.stream().noneMatch(finding -> finding.place().row() == 1)) {
            RawRow row = rows.next();
            findings.addAll(row.findings());
            try {
                SaleRule rule = RuleCells.read(cells(row, places));
                if (ids.add(rule.id())) {
                    rules.add(rule);
                } else {
                    findings.add(finding(sheet, row.number(), RuleColumn.ID, Problem.of("rules.id.twice", rule.id())));
                }
            } catch (RuleCells.Unreadable unreadable) {
                findings.add(finding(sheet, row.number(), unreadable.column(), unreadable.problem()));
            }
        }
        return new RuleList(sheet.file().replaceFirst("\\.[^.]*$", ""), rules, findings);
    }

    private static Finding finding(Sheet sheet, long row, RuleColumn column, Problem problem) {
        return new Finding(
                new Place(sheet.file(), row, Optional.of(column.heading())), problem, Finding.Outcome.ROW_LEFT_OUT);
    }

    private static Map<RuleColumn, Integer> places(List<String> headings) {
        Map<RuleColumn, Integer> places = new EnumMap<>(RuleColumn.class);
        for (int place = 0; place < headings.size(); place++) {
            String heading = headings.get(place).toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
            for (RuleColumn column : RuleColumn.values()) {
                if (column.heading().equals(heading)) {
                    places.putIfAbsent(column, place);
                }
            }
        }
        return places;
    }

    private static Map<RuleColumn, String> cells(RawRow row, Map<RuleColumn, Integer> places) {
        Map<RuleColumn, String> cells = new EnumMap<>(RuleColumn.class);
        places.forEach((column, place) -> {
            if (place < row.cells().size()) {
                cells.put(column, row.cells().get(place));
            }
        });
        return cells;
    }
}
