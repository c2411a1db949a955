package org.benchleaf.render.page;

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
/// @throws IllegalArgumentException when a used cell is not on the sheet, all are used, or a nudge is out of range
public record LabelRun(
        StockPaper paper,
        Set<Integer> usedCells,
        FillOrder order,
        double nudgeRightMm,
        double nudgeDownMm,
        int dpi,
        boolean outdoors,
        boolean bars) {
    private static final int USUAL_DPI = 300;
    private static final double MOST_NUDGE_MM = 10;

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
    }

    /// For a printer of 300 dots to the inch or a multiple of it, under a roof, without bars.
    public LabelRun(
            StockPaper paper, Set<Integer> usedCells, FillOrder order, double nudgeRightMm, double nudgeDownMm) {
        this(paper, usedCells, order, nudgeRightMm, nudgeDownMm, USUAL_DPI, false, false);
    }

    /// The same for a printer of other dots, and for codes that bear more.
    public LabelRun with(int dots, boolean outside, boolean withBars) {
        return new LabelRun(paper, usedCells, order, nudgeRightMm, nudgeDownMm, dots, outside, withBars);
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
