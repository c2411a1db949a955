package org.benchleaf.render;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.benchleaf.content.Palette;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PlacedPage;
import org.benchleaf.render.view.LabelSheet;
import org.benchleaf.render.view.LabelView;

/// Imposition: labels dealt to the free cells of one sheet after another.
final class LabelPages implements Iterator<PlacedPage> {
    private final Iterator<LabelView> labels;
    private final LabelRun run;
    private final Wording words;
    private final FontShelf shelf;
    private final Palette palette;
    private final PrintWatch watch;
    private boolean first = true;
    private Optional<LabelView> waiting = Optional.empty();

    /// @param labels measured; what asking for one throws is that label's refusal
    LabelPages(
            Iterator<LabelView> labels,
            LabelRun run,
            Wording words,
            FontShelf shelf,
            Palette palette,
            PrintWatch watch) {
        this.labels = labels;
        this.run = run;
        this.words = words;
        this.shelf = shelf;
        this.palette = palette;
        this.watch = watch;
    }

    @Override
    public boolean hasNext() {
        fetch();
        return waiting.isPresent();
    }

    @Override
    public PlacedPage next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        LabelSheet sheet = new LabelSheet(run, shelf, palette);
        for (int cell : order(run)) {
            if (first && run.usedCells().contains(cell + 1)) {
                continue;
            }
            fetch();
            if (waiting.isEmpty()) {
                break;
            }
            sheet.put(waiting.get(), cell);
            waiting = Optional.empty();
        }
        first = false;
        return sheet.page(words.text("labels.title"));
    }

    /// The next label that can be printed takes the cell; those that cannot leave it.
    private void fetch() {
        while (waiting.isEmpty() && labels.hasNext()) {
            try {
                waiting = Optional.of(labels.next());
            } catch (PrintRefused refusal) {
                watch.refused(refusal);
            }
        }
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
