package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;

/// Turns cells into facts; a cell that is refused is left out and told.
final class FactCells {
    private FactCells() {}

    /// The fact that a cell states; empty when it states none or is left out.
    static Optional<Fact<?>> fact(Attribute<?> attribute, Column column, CellText cell, Source source, RowNotes notes) {
        switch (cell) {
            case CellText.Absent ignored -> {
                return Optional.empty();
            }
            case CellText.Unclear(Problem problem) -> {
                notes.cellLeftOut(column.heading(), damage(problem));
                return Optional.empty();
            }
            case CellText.Stated(String read, String text) -> {
                String known = attribute.equals(Attributes.NATIVE_STATES) ? knownRegions(text, column, notes) : text;
                return known.isEmpty() ? Optional.empty() : fact(attribute, column, read, known, source, notes);
            }
        }
    }

    private static <T> Optional<Fact<?>> fact(
            Attribute<T> attribute, Column column, String read, String text, Source source, RowNotes notes) {
        return switch (attribute.codec().read(text)) {
            case Reading.Read<T>(T value) -> Optional.of(new Fact<>(attribute, value, source, false));
            case Reading.Refused<T>(Problem problem) -> {
                Problem asRead =
                        problem.details().getOrDefault("read", "").equals(text) ? problem.with("read", read) : problem;
                notes.cellLeftOut(column.heading(), damage(asRead));
                yield Optional.empty();
            }
        };
    }

    private static Problem damage(Problem problem) {
        String read = problem.details().getOrDefault("read", "");
        Problem whole = SpreadsheetDamage.explained(problem, read);
        if (!whole.equals(problem)) {
            return whole;
        }
        // of cells that belong together one may be damaged
        for (String cell : read.split("; ")) {
            Problem explained = SpreadsheetDamage.explained(problem, cell);
            if (!explained.equals(problem)) {
                return explained;
            }
        }
        return problem;
    }

    /// One region nobody knows does not cost the others.
    private static String knownRegions(String text, Column column, RowNotes notes) {
        List<String> known = new ArrayList<>();
        for (String piece : text.split("[\\s,;|]+")) {
            Reading<Region> region = Region.read(piece);
            region.toOptional().ifPresent(each -> known.add(each.code()));
            region.refusal().ifPresent(problem -> notes.cellLeftOut(column.heading(), damage(problem)));
        }
        return String.join(" ", known);
    }
}
