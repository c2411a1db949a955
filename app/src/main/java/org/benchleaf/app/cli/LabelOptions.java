package org.benchleaf.app.cli;

import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Option;

/// How labels are laid on stock paper.
final class LabelOptions {
    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter-30",
            description = "stock paper (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(
            names = "--used",
            paramLabel = "CELLS",
            defaultValue = "",
            description = "cells of the first sheet already used, for example 1-12,15")
    @SuppressWarnings("NullAway.Init")
    private String used;

    @Option(
            names = "--dpi",
            paramLabel = "DOTS",
            defaultValue = "300",
            description = "dots to the inch of the printer: codes are made of whole ones (default: ${DEFAULT-VALUE})")
    private int dpi;

    @Option(names = "--outdoor", description = "codes that can still be read when a quarter of them is lost")
    private boolean outdoors;

    @Option(names = "--bars", description = "the bars of a till for items that have a trade number")
    private boolean bars;

    @Option(names = "--check-bar", description = "a bar of 100 mm in the waste edge of each sheet, to be measured")
    private boolean check;

    @Option(names = "--by-column", description = "fill columns before rows")
    private boolean byColumn;

    @Option(
            names = "--right",
            paramLabel = "MM",
            defaultValue = "0",
            description = "move everything right, against a printer that pulls left")
    private double right;

    @Option(names = "--down", paramLabel = "MM", defaultValue = "0", description = "move everything down")
    private double down;

    /// @throws Refusal when the paper is unknown, or nothing is left of its first sheet
    LabelRun run(PrintService printing) {
        var order = byColumn ? LabelRun.FillOrder.BY_COLUMN : LabelRun.FillOrder.BY_ROW;
        try {
            LabelRun run =
                    new LabelRun(printing.paper(paper), cells(used), order, right, down).with(dpi, outdoors, bars);
            return check ? run.withCheck() : run;
        } catch (IllegalArgumentException impossible) {
            throw new Refusal(Problem.of("print.run", String.valueOf(impossible.getMessage())));
        }
    }

    /// Reads `1-12,15`.
    static Set<Integer> cells(String text) {
        Set<Integer> cells = new TreeSet<>();
        for (String piece : text.split(",")) {
            if (piece.isBlank()) {
                continue;
            }
            String[] ends = piece.strip().split("-", -1);
            try {
                int from = Integer.parseInt(ends[0].strip());
                int to = ends.length == 1 ? from : Integer.parseInt(ends[1].strip());
                if (ends.length > 2 || from < 1 || to < from || to > 1000) {
                    throw new NumberFormatException();
                }
                for (int cell = from; cell <= to; cell++) {
                    cells.add(cell);
                }
            } catch (NumberFormatException notCells) {
                throw new Refusal(Problem.of("print.cells", text));
            }
        }
        return cells;
    }
}
