package org.benchleaf.render.page;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.content.StockPaper;

/// How labels are laid on sheets of stock paper.
///
/// @param paper the geometry
/// @param usedCells cells of the first sheet that are already used, counted from 1 by rows from the top left
/// @param order in which cells are filled
/// @param nudgeRightMm added to every horizontal place in mm, against a printer that pulls to the left; -10 to 10
/// @param nudgeDownMm added to every vertical place in mm; -10 to 10
/// @param dpi dots to the inch of the printer; codes and bars are made of whole ones; 150 to 1200
/// @param outdoors whether codes bear the loss of a quarter of them, not of a seventh
/// @param bars whether items with a trade number bear the bars of a till
/// @param check whether a bar of 100 mm stands in the waste edge of each sheet, to be measured
/// @throws IllegalArgumentException when a used cell is not on the sheet, all are used, a nudge is out of range, or
///     the paper has no room for the bar of 100 mm
public record LabelRun(
        StockPaper paper,
        Set<Integer> usedCells,
        FillOrder order,
        double nudgeRightMm,
        double nudgeDownMm,
        int dpi,
        boolean outdoors,
        boolean bars,
        boolean check) {
    private static final int USUAL_DPI = 300;
    private static final double MOST_NUDGE_MM = 10;
    private static final double CHECK_MM = 100;
    /// The bar with its ticks and words.
    private static final double CHECK_ROOM_MM = 6;
    /// What office printers leave blank at each edge; common practice, no source.
    private static final double UNPRINTED_MM = 4.5;

    public LabelRun {
        usedCells = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(usedCells));
        for (int cell : usedCells) {
            if (cell < 1 || cell > paper.cells()) {
                throw new IllegalArgumentException(
                        "cells of " + paper.key() + " are 1 to " + paper.cells() + "; got " + cell);
            }
        }
        if (usedCells.size() == paper.cells()) {
            throw new IllegalArgumentException(
                    "all " + paper.cells() + " cells of the first sheet are used: start a new sheet");
        }
        if (!(Math.abs(nudgeRightMm) <= MOST_NUDGE_MM && Math.abs(nudgeDownMm) <= MOST_NUDGE_MM)) {
            throw new IllegalArgumentException("a nudge is at most 10 mm either way");
        }
        if (dpi < 150 || dpi > 1200) {
            throw new IllegalArgumentException("a printer has 150 to 1200 dots to the inch; got " + dpi);
        }
        if (check && checkBar(paper).isEmpty()) {
            throw new IllegalArgumentException(paper.key() + " has no waste edge for a bar of 100 mm");
        }
    }

    /// For a printer of 300 dots to the inch or a multiple of it, under a roof, without bars.
    public LabelRun(
            StockPaper paper, Set<Integer> usedCells, FillOrder order, double nudgeRightMm, double nudgeDownMm) {
        this(paper, usedCells, order, nudgeRightMm, nudgeDownMm, USUAL_DPI, false, false, false);
    }

    /// The same for a printer of other dots, and for codes that bear more.
    public LabelRun with(int dots, boolean outside, boolean withBars) {
        return new LabelRun(paper, usedCells, order, nudgeRightMm, nudgeDownMm, dots, outside, withBars, check);
    }

    /// The same with a bar of 100 mm in the waste edge.
    public LabelRun withCheck() {
        return new LabelRun(paper, usedCells, order, nudgeRightMm, nudgeDownMm, dpi, outdoors, bars, true);
    }

    /// From the top of the sheet in mm to the bar: above the cells, or else below them; empty where the edge is
    /// narrower than printers reach and the bar needs.
    public static Optional<Double> checkBar(StockPaper paper) {
        double below = paper.y(paper.rows() - 1) + paper.labelHeight();
        if (paper.sheetWidth() < CHECK_MM + 2 * UNPRINTED_MM) {
            return Optional.empty();
        }
        if (paper.top() >= UNPRINTED_MM + CHECK_ROOM_MM) {
            return Optional.of(paper.top() - CHECK_ROOM_MM);
        }
        return paper.sheetHeight() - below >= UNPRINTED_MM + CHECK_ROOM_MM ? Optional.of(below + 1) : Optional.empty();
    }

    /// A fresh sheet, filled by rows, unmoved.
    public static LabelRun on(StockPaper paper) {
        return new LabelRun(paper, Set.of(), FillOrder.BY_ROW, 0, 0);
    }

    /// The order in which cells are filled.
    public enum FillOrder {
        /// Left to right, then down.
        BY_ROW,
        /// Top to bottom, then right.
        BY_COLUMN
    }
}
