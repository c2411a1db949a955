package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.app.Refusal;
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.shared.Problem;

/// Prints documents of chosen plants to files, looks them through first, and enters them in the print ledger.
public final class PrintService {
    private final PrintDesk desk;

    public PrintService(PrintDesk desk) {
        this.desk = desk;
    }

    public SheetPrints sheets() {
        return new SheetPrints(desk);
    }

    public CardPrints cards() {
        return new CardPrints(desk);
    }

    public LabelPrints labels() {
        return new LabelPrints(desk);
    }

    /// The page that shows what a printer does wrong.
    public void calibration(SheetFormat format, String printerName, Path file) {
        PressRoom.write(file, out -> {
            desk.printer().calibration(format, printerName, desk.style(), out);
            return 1;
        });
    }

    /// The cells of a stock paper as outlines.
    public void proof(StockPaper paper, PressSettings press, Path file) {
        PressRoom.write(file, out -> {
            desk.printer().on(press).proof(paper, desk.style(), out);
            return 1;
        });
    }

    /// The same in another order.
    public List<Wanted> inOrder(List<Wanted> wanted, PrintOrder order) {
        return PrintStock.ofWanted(desk.catalog(), wanted).inOrder(wanted, order);
    }

    /// A stock paper by its key.
    ///
    /// @throws Refusal when there is none of that key
    public StockPaper paper(String key) {
        List<StockPaper> papers = desk.content().papers();
        return papers.stream()
                .filter(paper -> paper.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new Refusal(Problem.of("paper.unknown", key)
                        .with(
                                "accepted",
                                String.join(
                                        ", ",
                                        papers.stream().map(StockPaper::key).toList()))));
    }
}
