package org.benchleaf.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.WebDocuments;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.shared.code.LiveLink;

/// Prints documents of many plants, and writes their twins for the web. Those that bear codes are entered in the print
/// ledger; comparisons and availability lists have none, and what they say is of the day.
public final class DocumentService {
    private final PrintDesk desk;
    private final DocumentAssembler assembler;
    private final WebDocuments web;

    public DocumentService(PrintDesk desk, DocumentAssembler assembler, WebDocuments web) {
        this.desk = desk;
        this.assembler = assembler;
        this.web = web;
    }

    /// Makes what is then printed.
    public DocumentAssembler assembler() {
        return assembler;
    }

    /// @param plants that stand on it
    public PressOutcome comparison(
            Comparison comparison, List<PlantRecord> plants, SheetFormat format, PressOrder press, Path file) {
        return print(
                (printer, out) -> printer.comparison(comparison, format, desk.style(), out),
                plants,
                List.of(),
                press,
                file);
    }

    /// @param plants that stand on it
    public PressOutcome availability(
            AvailabilityList list, List<PlantRecord> plants, SheetFormat format, PressOrder press, Path file) {
        return print(
                (printer, out) -> printer.availability(list, format, desk.style(), out),
                plants,
                List.of(),
                press,
                file);
    }

    /// @param plants that stand on it
    public PressOutcome bulletin(
            Bulletin bulletin, List<PlantRecord> plants, SheetFormat format, PressOrder press, Path file) {
        return print(
                (printer, out) -> printer.bulletin(bulletin, format, desk.style(), out),
                plants,
                bulletin.lead().stream()
                        .map(lead -> entry("bulletin", format, lead.title(), lead.link(), ModelDigest.of(bulletin)))
                        .toList(),
                press,
                file);
    }

    /// @param plants that stand on it
    public PressOutcome listPack(
            ListPack pack, List<PlantRecord> plants, SheetFormat format, PressOrder press, Path file) {
        return print(
                (printer, out) -> printer.listPack(pack, format, desk.style(), out),
                plants,
                pack.sheets().stream()
                        .map(sheet -> entry("list", format, sheet.title(), sheet.link(), ModelDigest.of(sheet)))
                        .toList(),
                press,
                file);
    }

    private PressOutcome print(
            PressRoom.Job job, List<PlantRecord> plants, List<PrintEntry> entries, PressOrder press, Path file) {
        return desk.room()
                .print(
                        job,
                        plants.stream()
                                .distinct()
                                .flatMap(plant -> desk.advice().sale(plant).stream())
                                .toList(),
                        entries,
                        press,
                        file);
    }

    private static PrintEntry entry(
            String document, SheetFormat format, PlantTitle title, LiveLink link, String digest) {
        return new PrintEntry(
                document,
                format.name().toLowerCase(Locale.ROOT),
                link.plant(),
                Optional.empty(),
                "",
                title.botanical().toString(),
                Optional.empty(),
                link.toString(),
                digest,
                1);
    }

    /// The same for the web, as one file.
    public void comparison(Comparison comparison, Path html) {
        write(web.comparison(comparison, desk.style()), html);
    }

    /// The same for the web, as one file; what cannot be printed was told with the paper.
    public void availability(AvailabilityList list, Path html) {
        write(web.availability(list, desk.style(), refusal -> {}), html);
    }

    /// The same for the web, as one file.
    public void bulletin(Bulletin bulletin, Path html) {
        write(web.bulletin(bulletin, desk.style()), html);
    }

    /// The same for the web, as one file.
    public void listPack(ListPack pack, Path html) {
        write(web.listPack(pack, desk.style()), html);
    }

    private static void write(String page, Path html) {
        PressRoom.write(html, out -> {
            try {
                out.write(page.getBytes(StandardCharsets.UTF_8));
                return 1;
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
        });
    }
}
