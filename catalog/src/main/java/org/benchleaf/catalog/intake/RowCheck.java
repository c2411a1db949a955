package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;

/// Fits a row's fields to the headings; says what is odd about its shape and its letters.
final class RowCheck {
    /// An apostrophe before what a spreadsheet program would run, as our own export writes it.
    private static final Pattern FORMULA_AS_TEXT = Pattern.compile("(?s)'[=+\\-@].*");

    /// Nobody writes so much about a plant into a cell; an unclosed quote does.
    private static final int LONGEST = 4_000;
    private static final int SHOWN = 60;

    private final String file;
    private final char delimiter;
    private final List<String> headings;

    RowCheck(String file, char delimiter, List<String> headings) {
        this.file = file;
        this.delimiter = delimiter;
        this.headings = headings;
    }

    RawRow row(RowSource.SourceRow source) {
        long number = source.number();
        List<String> fields = source.cells();
        List<Finding> findings = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        for (int at = 0; at < headings.size(); at++) {
            String cell = at < fields.size() ? fields.get(at).strip() : "";
            if (delimiter != SheetReader.NONE && FORMULA_AS_TEXT.matcher(cell).matches()) {
                cell = cell.substring(1);
            }
            Place place = new Place(file, number, Optional.of(headings.get(at)));
            if (cell.length() > LONGEST) {
                Problem problem = Problem.of("cell.long", cell.substring(0, SHOWN) + "…")
                        .with("found", Integer.toString(cell.length()))
                        .with("longest", Integer.toString(LONGEST));
                findings.add(new Finding(place, problem, Finding.Outcome.CELL_LEFT_OUT));
                cells.add("");
            } else {
                cells.add(letters(cell, place, findings));
            }
        }
        for (RowSource.CellNote note : source.notes()) {
            if (note.column() < headings.size()) {
                Place place = new Place(file, number, Optional.of(headings.get(note.column())));
                findings.add(new Finding(place, note.problem(), note.outcome()));
            }
        }
        shape(number, fields).ifPresent(findings::add);
        return new RawRow(number, cells, findings);
    }

    private Optional<Finding> shape(long number, List<String> fields) {
        Place place = new Place(file, number, Optional.empty());
        boolean more = fields.stream().skip(headings.size()).anyMatch(field -> !field.isBlank());
        if (more) {
            // Some cell holds a delimiter that nobody quoted: every cell after it stands under a wrong heading
            return Optional.of(new Finding(
                    place, counted("row.long", fields.size(), fields.get(0)), Finding.Outcome.ROW_LEFT_OUT));
        }
        if (fields.stream().anyMatch(this::swallowsRows)) {
            return Optional.of(
                    new Finding(place, Problem.of("row.quotes", fields.get(0)), Finding.Outcome.ROW_LEFT_OUT));
        }
        if (fields.size() < headings.size() && delimiter != SheetReader.NONE) {
            return Optional.of(
                    new Finding(place, counted("row.short", fields.size(), fields.get(0)), Finding.Outcome.KEPT));
        }
        return Optional.empty();
    }

    /// A cell that holds line ends and after them as many delimiters as a row has: a quote was not closed.
    private boolean swallowsRows(String field) {
        int end = field.indexOf('\n');
        return end >= 0
                && headings.size() > 2
                && field.substring(end).chars().filter(c -> c == delimiter).count() >= headings.size() / 2;
    }

    private Problem counted(String key, int found, String read) {
        return Problem.of(key, read)
                .with("found", Integer.toString(found))
                .with("expected", Integer.toString(headings.size()));
    }

    private static String letters(String cell, Place place, List<Finding> findings) {
        Optional<String> meant = Mojibake.repaired(cell);
        if (meant.isPresent()) {
            Problem problem = Problem.of("text.mojibake", cell).with("taken", meant.get());
            findings.add(new Finding(place, problem, Finding.Outcome.KEPT));
            return meant.get();
        }
        if (Mojibake.isLossy(cell)) {
            findings.add(new Finding(place, Problem.of("text.lost", cell), Finding.Outcome.KEPT));
        }
        return cell;
    }
}
