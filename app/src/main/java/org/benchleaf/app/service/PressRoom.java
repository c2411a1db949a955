package org.benchleaf.app.service;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.render.Printer;
import org.benchleaf.shared.Problem;

/// Where everything is printed: looked through first, then written, then entered in the print ledger. A file appears
/// whole or not at all: it is written beside its place and moved there when it is done.
public final class PressRoom {
    private final Printer printer;
    private final PrintLedger ledger;

    public PressRoom(Printer printer, PrintLedger ledger) {
        this.printer = printer;
        this.ledger = ledger;
    }

    /// Prints with the printer it is given.
    public interface Job {
        /// @return pages written
        int print(Printer printer, OutputStream out);
    }

    /// @param known what is found already, such as a missing price
    /// @param entries for the ledger, one for each thing printed
    public PressOutcome print(
            Job job, List<PrintFinding> known, List<PrintEntry> entries, PressOrder order, Path file) {
        List<PrintFinding> findings = new ArrayList<>(known);
        Printer set = printer.on(order.press());
        if (order.checked()) {
            findings.addAll(set.check(dry -> job.print(dry, OutputStream.nullOutputStream())));
        }
        if (order.strict() && !findings.isEmpty()) {
            return new PressOutcome(0, findings);
        }
        Refused refused = new Refused(order);
        int pages = 0;
        try {
            pages = write(file, out -> job.print(set.watchedBy(refused), out));
        } catch (PrintRefused nothingLeft) {
            if (refused.found.isEmpty()) {
                throw nothingLeft;
            }
        }
        if (!order.checked()) {
            findings.addAll(refused.found);
        }
        if (pages > 0) {
            ledger.add(entries.stream().filter(refused::wasPrinted).toList());
        }
        return new PressOutcome(pages, findings);
    }

    /// Lets refused pages pass and keeps their names.
    private static final class Refused implements PrintWatch {
        private final PressOrder order;
        private final List<PrintFinding> found = new ArrayList<>();

        Refused(PressOrder order) {
            this.order = order;
        }

        @Override
        public synchronized void refused(PrintRefused refusal) {
            found.add(PrintFinding.of(refusal));
        }

        @Override
        public void written(int pages) {
            order.progress().accept(pages);
        }

        synchronized boolean wasPrinted(PrintEntry entry) {
            return found.stream()
                    .map(PrintFinding::subject)
                    .noneMatch(subject -> subject.startsWith(entry.name())
                            && (entry.detail().isEmpty() || subject.contains(entry.detail())));
        }
    }

    /// Something that writes pages.
    interface Pages {
        int print(OutputStream out);
    }

    static int write(Path file, Pages pages) {
        Path place = file.toAbsolutePath();
        try {
            Path folder = Optional.ofNullable(place.getParent()).orElse(place);
            Files.createDirectories(folder);
            Path partly = Files.createTempFile(folder, ".benchleaf-", ".pdf");
            try {
                int count;
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(partly))) {
                    count = pages.print(out);
                }
                Files.move(partly, place, StandardCopyOption.REPLACE_EXISTING);
                return count;
            } finally {
                Files.deleteIfExists(partly);
            }
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("print.unwritable", file.toString()));
        }
    }
}
