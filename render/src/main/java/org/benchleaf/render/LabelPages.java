package org.benchleaf.render;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.LabelView;
import org.benchleaf.render.view.LabelViews;
import org.benchleaf.shared.Problem;

/// Imposition: labels dealt to the free cells of one sheet after another.
final class LabelPages implements Iterator<PrintPage> {
    private final SheetTemplates templates;
    private final Iterator<Label> labels;
    private final LabelRun run;
    private final Wording words;
    private final LabelViews views;
    private final PrintWatch watch;
    private boolean first = true;

    LabelPages(
            SheetTemplates templates,
            List<Label> labels,
            LabelRun run,
            Wording words,
            FontShelf shelf,
            PrintWatch watch) {
        this.watch = watch;
        this.templates = templates;
        this.labels = labels.iterator();
        this.run = run;
        this.words = words;
        this.views = new LabelViews(run, words, shelf);
    }

    @Override
    public boolean hasNext() {
        return labels.hasNext();
    }

    @Override
    public PrintPage next() {
        if (!labels.hasNext()) {
            throw new NoSuchElementException();
        }
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        List<LabelView> set = new ArrayList<>();
        for (int cell : order(run)) {
            if (first && run.usedCells().contains(cell + 1)) {
                continue;
            }
            setNext(cell, drawings).ifPresent(set::add);
        }
        if (set.isEmpty()) {
            throw new PrintRefused(Problem.of("print.nothing", ""));
        }
        first = false;
        Map<String, Object> model = Map.of(
                "labels", set,
                "check", run.check() ? LabelRun.checkBar(run.paper()).stream().toList() : List.of(),
                "sheetWidth", run.paper().sheetWidth(),
                "sheetHeight", run.paper().sheetHeight(),
                "title", words.text("labels.title"),
                "language", words.language().getLanguage());
        return new PrintPage(run.paper().name(), List.of(() -> templates.fill("labels", model)), drawings);
    }

    /// The next label that can be printed takes the cell; those that cannot leave it.
    private Optional<LabelView> setNext(int cell, Map<String, Drawing> drawings) {
        while (labels.hasNext()) {
            try {
                return Optional.of(views.set(labels.next(), cell, drawings));
            } catch (PrintRefused refusal) {
                watch.refused(refusal);
            }
        }
        return Optional.empty();
    }

    /// Cells in the order of filling, counted from 0 by rows.
    static List<Integer> order(LabelRun run) {
        StockPaper paper = run.paper();
        List<Integer> cells = new ArrayList<>();
        for (int place = 0; place < paper.cells(); place++) {
            cells.add(
                    switch (run.order()) {
                        case BY_ROW -> place;
                        case BY_COLUMN -> place % paper.rows() * paper.columns() + place / paper.rows();
                    });
        }
        return cells;
    }
}
