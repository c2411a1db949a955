package org.benchleaf.app.service;

import java.nio.file.Path;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.ListPack;

/// Prints documents of many plants to files. A file appears whole or not at all.
public final class DocumentService {
    private final DocumentAssembler assembler;
    private final Printer printer;
    private final PrintStyle style;

    public DocumentService(DocumentAssembler assembler, Printer printer, PrintStyle style) {
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
        return PrintService.write(file, out -> printer.comparison(comparison, format, style, out));
    }

    /// @return pages written
    public int availability(AvailabilityList list, SheetFormat format, Path file) {
        return PrintService.write(file, out -> printer.availability(list, format, style, out));
    }

    /// @return pages written
    public int bulletin(Bulletin bulletin, SheetFormat format, Path file) {
        return PrintService.write(file, out -> printer.bulletin(bulletin, format, style, out));
    }

    /// @return pages written
    public int listPack(ListPack pack, SheetFormat format, Path file) {
        return PrintService.write(file, out -> printer.listPack(pack, format, style, out));
    }
}
