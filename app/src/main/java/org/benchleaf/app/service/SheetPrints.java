package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.PlantSheet;

/// Prints product sheets.
public final class SheetPrints {
    private static final String SHEET = "sheet";

    private final PrintDesk desk;

    SheetPrints(PrintDesk desk) {
        this.desk = desk;
    }

    /// One product sheet a plant, with its stock as of now.
    ///
    /// @param everySource whether what other sources state stands beside the facts shown
    public PressOutcome print(
            List<PlantRecord> plants, SheetFormat format, boolean everySource, PressOrder press, Path file) {
        PrintStock stock = PrintStock.of(desk.catalog(), plants);
        PrintBatch<PlantSheet> batch = new PrintBatch<>();
        for (PlantRecord plant : plants) {
            PlantSheet sheet = desk.sheets().sheet(plant, stock.of(plant), desk.now(), everySource);
            batch.add(sheet, entry(sheet, format));
            batch.found(desk.advice().sale(plant));
        }
        return desk.room()
                .print(
                        (printer, out) -> printer.plantSheets(batch.models(), format, desk.style(), out),
                        batch.findings(),
                        batch.entries(),
                        press,
                        file);
    }

    private static PrintEntry entry(PlantSheet sheet, SheetFormat format) {
        return new PrintEntry(
                SHEET,
                format.name().toLowerCase(Locale.ROOT),
                sheet.link().plant(),
                Optional.empty(),
                "",
                sheet.title().botanical().toString(),
                Optional.empty(),
                sheet.link().toString(),
                ModelDigest.of(sheet),
                1);
    }
}
