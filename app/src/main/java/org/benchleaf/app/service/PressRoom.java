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
import java.util.function.BooleanSupplier;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.render.Printer;
import org.benchleaf.shared.Problem;

/// Where everything is printed: each page is looked through before it is written, and what was printed is entered in
/// the print ledger. A file appears whole or not at all: it is written beside its place, and moved there when it is
/// done and nothing was found that should hold it up.
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
        Refused refused = new Refused(order, findings);
        Printer set = printer.on(order.press()).watchedBy(refused);
        Printer checked = order.checked() ? set.checkedBy(findings::add) : set;
        int pages = 0;
        try {
            pages = write(file, out -> job.print(checked, out), () -> !order.strict() || findings.isEmpty());
        } catch (PrintRefused nothingLeft) {
            if (refused.subjects.isEmpty()) {
                throw nothingLeft;
            }
        }
        if (pages > 0) {
            ledger.add(entries.stream().filter(refused::wasPrinted).toList());
        }
        return new PressOutcome(pages, findings);
    }

    /// Lets refused pages pass and keeps their names. Called by the thread that prints.
    private static final class Refused implements PrintWatch {
        private final PressOrder order;
        private final List<PrintFinding> findings;
        private final List<String> subjects = new ArrayList<>();

        Refused(PressOrder order, List<PrintFinding> findings) {
            this.order = order;
            this.findings = findings;
        }

        @Override
        public void refused(PrintRefused refusal) {
            PrintFinding finding = PrintFinding.of(refusal);
            findings.add(finding);
            subjects.add(finding.subject());
        }

        @Override
        public void written(int pages) {
            order.progress().accept(pages);
        }

        boolean wasPrinted(PrintEntry entry) {
            return subjects.stream()
                    .noneMatch(subject -> subject.startsWith(entry.name())
                            && (entry.detail().isEmpty() || subject.contains(entry.detail())));
        }
    }

    /// Something that writes pages.
    interface Pages {
        int print(OutputStream out);
    }

    /// @return pages written
    static int write(Path file, Pages pages) {
        return write(file, pages, () -> true);
    }

    /// @param kept whether the file is to appear, asked when it is whole
    /// @return pages written; 0 when it is not to appear
    private static int write(Path file, Pages pages, BooleanSupplier kept) {
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
                if (!kept.getAsBoolean()) {
                    return 0;
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
