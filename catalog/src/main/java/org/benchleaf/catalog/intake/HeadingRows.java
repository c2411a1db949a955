package org.benchleaf.catalog.intake;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.intake.RowSource.SourceRow;
import org.benchleaf.shared.Problem;

/// Finds the headings of a file: passes over a title above them, joins two rows of which the upper spans columns, as
/// merged cells do.
final class HeadingRows {
    /// How far below the top headings are looked for.
    private static final int LOOK = 12;

    private final String file;
    private final RowSource source;
    private final Deque<SourceRow> ahead = new ArrayDeque<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> headings;
    private long row;
    private Optional<SheetException> broken = Optional.empty();

    HeadingRows(String file, RowSource source) {
        this.file = file;
        this.source = source;
        lookAhead();
        SourceRow first = take().orElseThrow(() -> new SheetException(Problem.of("file.empty", file)));
        while (isTitle(first) && !ahead.isEmpty()) {
            tell(
                    first,
                    Problem.of(
                            "heading.title",
                            first.cells().stream()
                                    .filter(cell -> !cell.isBlank())
                                    .findFirst()
                                    .orElse("")));
            first = take().orElseThrow();
        }
        this.row = first.number();
        this.headings = headings(first);
    }

    /// A file that breaks further down breaks when one comes there.
    private void lookAhead() {
        try {
            while (ahead.size() < LOOK && read()) {}
        } catch (SheetException below) {
            if (ahead.isEmpty()) {
                throw below;
            }
            broken = Optional.of(below);
        }
    }

    List<String> headings() {
        return headings;
    }

    /// The row of the headings, the lower of two.
    long row() {
        return row;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /// The next row below the headings that holds anything.
    Optional<SourceRow> next() {
        if (ahead.isEmpty()) {
            if (broken.isPresent()) {
                throw broken.get();
            }
            read();
        }
        return take();
    }

    private Optional<SourceRow> take() {
        return Optional.ofNullable(ahead.poll());
    }

    private boolean read() {
        Optional<SourceRow> row = source.next();
        while (row.filter(SourceRow::isBlank).isPresent()) {
            row = source.next();
        }
        row.ifPresent(ahead::add);
        return row.isPresent();
    }

    /// A single text above rows of at least three.
    private boolean isTitle(SourceRow row) {
        if (row.filled() != 1 || ahead.stream().noneMatch(below -> below.filled() >= 3)) {
            return false;
        }
        String text =
                row.cells().stream().filter(cell -> !cell.isBlank()).findFirst().orElse("");
        return !MapProposal.isHeading(text);
    }

    private List<String> headings(SourceRow upper) {
        Optional<SourceRow> lower = Optional.ofNullable(ahead.peek()).filter(row -> isLowerHalf(upper, row));
        if (lower.isEmpty()) {
            return upper.cells().stream().map(String::strip).toList();
        }
        ahead.poll();
        row = lower.get().number();
        List<String> joined = new ArrayList<>();
        String group = "";
        int width = Math.max(upper.cells().size(), lower.get().cells().size());
        for (int column = 0; column < width; column++) {
            String above = upper.cell(column);
            String below = lower.get().cell(column);
            group = above.isEmpty() ? group : above;
            boolean alone = !below.isEmpty() && count(lower.get(), below) == 1 && MapProposal.isHeading(below);
            joined.add(below.isEmpty() ? above : alone || group.isEmpty() ? below : group + " " + below);
        }
        tell(upper, Problem.of("heading.merged", String.join(", ", joined)));
        return List.copyOf(joined);
    }

    private static long count(SourceRow row, String text) {
        return row.cells().stream()
                .filter(cell -> cell.strip().equalsIgnoreCase(text))
                .count();
    }

    /// Whether the second row stands exactly under the gaps of the first: below a heading that spans columns
    /// there are headings, below one that stands alone there is nothing.
    private static boolean isLowerHalf(SourceRow upper, SourceRow lower) {
        int width = Math.max(upper.cells().size(), lower.cells().size());
        boolean spans = false;
        for (int column = 0; column < width; column++) {
            boolean above = !upper.cell(column).isEmpty();
            boolean below = !lower.cell(column).isEmpty();
            boolean starts =
                    above && column + 1 < width && upper.cell(column + 1).isEmpty();
            boolean spanned = starts && below && !lower.cell(column + 1).isEmpty();
            spans |= spanned;
            if (above && below && !spanned || !above && !below) {
                return false;
            }
        }
        List<String> texts = lower.cells().stream()
                .map(String::strip)
                .filter(cell -> !cell.isEmpty())
                .toList();
        return spans && texts.stream().filter(MapProposal::isHeading).count() * 2 >= texts.size();
    }

    private void tell(SourceRow row, Problem problem) {
        findings.add(new Finding(new Place(file, row.number(), Optional.empty()), problem, Finding.Outcome.KEPT));
    }
}
