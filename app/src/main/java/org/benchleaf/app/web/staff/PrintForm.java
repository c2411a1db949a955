package org.benchleaf.app.web.staff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// The form of the print desk as it was sent: everything that was chosen so far travels with it, so that no server has
/// to remember it.
///
/// @param lines what is to be printed
/// @param fields one value each, by their names
/// @param ticks names of what is ticked
/// @param used cells of the first sheet that are used already
record PrintForm(List<Line> lines, Map<String, String> fields, Set<String> ticks, Set<Integer> used) {
    /// More lines are printed from a spreadsheet by the command line.
    static final int MOST_LINES = 300;
    /// What stands in a field that nobody filled in.
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("doc", "card"),
            Map.entry("card", "large"),
            Map.entry("sign", "sign"),
            Map.entry("paper", "letter-30"),
            Map.entry("dpi", "300"),
            Map.entry("order", "given"),
            Map.entry("see", "1"));

    private static final List<String> FIELDS = List.of(
            "doc", "card", "sign", "paper", "dpi", "page", "order", "see", "language", "units", "palette", "printer");
    /// What adds lines; kept when it could not be added.
    private static final List<String> ADDING = List.of("name", "need", "kind", "place", "list");
    private static final List<String> TICKS =
            List.of("wide", "no-price", "by-column", "by-count", "outdoor", "bars", "sold-out");

    /// @param size as written; empty for the smallest
    /// @param count as typed
    record Line(PlantKey plant, String size, String count) {
        /// What its choice of a size sends.
        String value() {
            return plant + "|" + size;
        }

        static Optional<Line> read(String value, String count) {
            String[] parts = value.split("\\|", 2);
            return PlantKey.read(parts[0])
                    .toOptional()
                    .map(key -> new Line(key, parts.length > 1 ? parts[1] : "", count));
        }
    }

    PrintForm {
        lines = List.copyOf(lines);
        fields = Map.copyOf(fields);
        ticks = Set.copyOf(ticks);
        used = Set.copyOf(used);
    }

    static PrintForm empty() {
        return new PrintForm(List.of(), Map.of(), Set.of(), Set.of());
    }

    static PrintForm of(Request request) {
        List<Line> lines = new ArrayList<>();
        List<String> values = request.forms("line");
        List<String> counts = request.forms("count");
        List<String> dropped = request.forms("drop");
        for (int at = 0; at < values.size(); at++) {
            if (!dropped.contains(Integer.toString(at))) {
                Line.read(values.get(at), at < counts.size() ? cut(counts.get(at)) : "")
                        .ifPresent(lines::add);
            }
        }
        Map<String, String> fields = new LinkedHashMap<>();
        for (String name : FIELDS) {
            fields.put(name, Desk.field(request, name));
        }
        for (String name : ADDING) {
            fields.put(name, request.form(name).orElse("").strip());
        }
        Set<String> ticks = new TreeSet<>();
        for (String name : TICKS) {
            if (request.form(name).isPresent()) {
                ticks.add(name);
            }
        }
        Set<Integer> used = new TreeSet<>();
        for (String cell : request.forms("used")) {
            if (cell.matches("[1-9]\\d{0,2}")) {
                used.add(Integer.valueOf(cell));
            }
        }
        return new PrintForm(lines, fields, ticks, used);
    }

    private static String cut(String text) {
        String plain = text.strip();
        return plain.substring(0, Math.min(6, plain.length()));
    }

    String field(String name) {
        String text = fields.getOrDefault(name, "");
        return text.isEmpty() ? USUAL.getOrDefault(name, "") : text;
    }

    boolean ticked(String name) {
        return ticks.contains(name);
    }

    /// The same with more to print, of which nothing is left to be added.
    PrintForm with(List<Line> more) {
        List<Line> all = new ArrayList<>(lines);
        more.stream().filter(line -> !all.contains(line)).forEach(all::add);
        if (all.size() > MOST_LINES) {
            throw Desk.refusal("desk.print.many", Integer.toString(all.size()));
        }
        Map<String, String> left = new LinkedHashMap<>(fields);
        ADDING.forEach(left::remove);
        return new PrintForm(all, left, ticks, used);
    }

    /// The same with cells that this paper has.
    PrintForm onCells(int cells) {
        Set<Integer> there = new TreeSet<>(used);
        there.removeIf(cell -> cell > cells);
        return new PrintForm(lines, fields, ticks, there);
    }

    static Line line(PlantRecord plant, Optional<StockSize> size, Optional<Integer> count) {
        return new Line(
                plant.key(),
                size.map(StockSize::toString).orElse(""),
                count.map(number -> Integer.toString(number)).orElse(""));
    }

    /// A word in the form of a constant's name.
    static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
