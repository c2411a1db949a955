package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.Money;

/// Prints labels of lots.
public final class LabelPrints {
    private static final String LABEL = "label";

    private final PrintDesk desk;

    LabelPrints(PrintDesk desk) {
        this.desk = desk;
    }

    /// Labels of every lot of the plants that holds any.
    ///
    /// @param byCount whether each plant of a lot gets one; otherwise as many as are wanted, or one
    /// @throws Refusal when no lot holds any
    public PressOutcome print(
            List<Wanted> wanted, boolean byCount, LabelRun run, PrintOrder order, PressOrder press, Path file) {
        return press(batch(wanted, byCount, run, order), run, press, file);
    }

    /// Labels that were printed on that paper since then and would say something else today: another price, name,
    /// place or trade number, or another address in the code. A lot that holds none any more gets none.
    ///
    /// @throws Refusal when nothing has changed
    public PressOutcome changed(Instant since, LabelRun run, PressOrder press, Path file) {
        PrintBatch<Label> batch = new PrintBatch<>();
        for (PrintedEntry printed : desk.ledger().newest(LABEL, since)) {
            PrintEntry old = printed.entry();
            if (old.format().equals(run.paper().key())) {
                desk.catalog().plant(old.plant()).ifPresent(plant -> addChanged(plant, old, run, batch));
            }
        }
        if (batch.isEmpty()) {
            throw new Refusal(Problem.of("print.unchanged", ""));
        }
        return press(batch, run, press, file);
    }

    private void addChanged(PlantRecord plant, PrintEntry old, LabelRun run, PrintBatch<Label> batch) {
        PrintStock stock = PrintStock.of(desk.catalog(), List.of(plant));
        stock.lots(new Wanted(plant, Optional.empty(), Optional.empty())).stream()
                .filter(lot -> lot.lot().equals(old.detail()))
                .forEach(lot -> {
                    Label label = desk.sheets().label(plant, stock.item(plant, lot.item()), lot);
                    if (!ModelDigest.of(label).equals(old.digest())) {
                        batch.add(label, entry(plant, lot, label, run, old.copies()));
                        batch.found(desk.advice().sale(plant));
                    }
                });
    }

    /// The same labels as pictures of black and white dots, `1.png` and so on; one that cannot be printed has no
    /// picture.
    ///
    /// @throws Refusal when the paper holds more than one label
    public void pictures(List<Wanted> wanted, boolean byCount, LabelRun run, PrintOrder order, Path folder) {
        if (run.paper().cells() != 1) {
            throw new Refusal(Problem.of("print.png-paper", run.paper().key()));
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException unwritable) {
            throw unwritable(folder);
        }
        int[] number = {0};
        desk.printer()
                .watchedBy(refusal -> {})
                .labelPictures(batch(wanted, byCount, run, order).models(), run, desk.style(), picture -> {
                    try {
                        Files.write(folder.resolve(++number[0] + ".png"), picture);
                    } catch (IOException unwritable) {
                        throw unwritable(folder);
                    }
                });
    }

    private static Refusal unwritable(Path folder) {
        return new Refusal(Problem.of("print.unwritable", folder.toString()));
    }

    private PrintBatch<Label> batch(List<Wanted> wanted, boolean byCount, LabelRun run, PrintOrder order) {
        PrintStock stock = PrintStock.ofWanted(desk.catalog(), wanted);
        PrintBatch<Label> batch = new PrintBatch<>();
        for (Wanted one : stock.inOrder(wanted, order)) {
            List<LotRecord> lots = stock.lots(one);
            batch.found(lots.isEmpty() ? List.of() : desk.advice().sale(one.plant()));
            for (LotRecord lot : lots) {
                Label label = desk.sheets().label(one.plant(), stock.item(one.plant(), lot.item()), lot);
                int copies = byCount ? lot.count() : one.copies().orElse(1);
                batch.add(label, entry(one.plant(), lot, label, run, copies));
                if (byCount) {
                    batch.found(desk.advice().count(one.plant(), lot));
                }
            }
        }
        if (batch.isEmpty()) {
            String first =
                    wanted.isEmpty() ? "" : wanted.getFirst().plant().name().toString();
            throw new Refusal(Problem.of("print.nothing", first));
        }
        return batch;
    }

    private PressOutcome press(PrintBatch<Label> batch, LabelRun run, PressOrder press, Path file) {
        return desk.room()
                .print(
                        (printer, out) -> printer.labels(batch.models(), run, desk.style(), out),
                        batch.findings(),
                        batch.entries(),
                        press,
                        file);
    }

    private static PrintEntry entry(PlantRecord plant, LotRecord lot, Label label, LabelRun run, int copies) {
        return new PrintEntry(
                LABEL,
                run.paper().key(),
                plant.key(),
                Optional.of(lot.item().number()),
                lot.lot(),
                label.title().botanical().toString(),
                label.price().map(Money::toString),
                label.link().toString(),
                ModelDigest.of(label),
                copies);
    }
}
