package org.benchleaf.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.WebDocuments;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.ListPack;

/// Prints documents of many plants to files, and writes their twins for the web. A file appears whole or not at all.
public final class DocumentService {
    private final DocumentAssembler assembler;
    private final Printer printer;
    private final WebDocuments web;
    private final PrintStyle style;

    public DocumentService(DocumentAssembler assembler, Printer printer, WebDocuments web, PrintStyle style) {
        this.web = web;
        this.assembler = assembler;
        this.printer = printer;
        this.style = style;
    }

    /// Makes what is then printed.
    public DocumentAssembler assembler() {
        return assembler;
    }

    /// @return pages written
    public int comparison(Comparison comparison, SheetFormat format, Path file) {
        return PressRoom.write(file, out -> printer.comparison(comparison, format, style, out));
    }

    /// @return pages written
    public int availability(AvailabilityList list, SheetFormat format, Path file) {
        return PressRoom.write(file, out -> printer.availability(list, format, style, out));
    }

    /// @return pages written
    public int bulletin(Bulletin bulletin, SheetFormat format, Path file) {
        return PressRoom.write(file, out -> printer.bulletin(bulletin, format, style, out));
    }

    /// @return pages written
    public int listPack(ListPack pack, SheetFormat format, Path file) {
        return PressRoom.write(file, out -> printer.listPack(pack, format, style, out));
    }

    /// The same for the web, as one file.
    public void comparison(Comparison comparison, Path html) {
        write(web.comparison(comparison, style), html);
    }

    /// The same for the web, as one file.
    public void availability(AvailabilityList list, Path html) {
        write(web.availability(list, style), html);
    }

    /// The same for the web, as one file.
    public void bulletin(Bulletin bulletin, Path html) {
        write(web.bulletin(bulletin, style), html);
    }

    /// The same for the web, as one file.
    public void listPack(ListPack pack, Path html) {
        write(web.listPack(pack, style), html);
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
