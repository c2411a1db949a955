package org.benchleaf.app.service;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.prints.PrintedBase;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;

/// Prints what somebody put together, or rehearses it: the same file, of which the print ledger hears nothing.
public final class PrintTasks {
    private final Printing printing;
    private final Function<PrintStyle, DocumentAssembler> documents;
    private final Function<String, Printer> printers;
    private final PrintLedger ledger;
    private final Supplier<LocalDateTime> now;

    /// Opens a print service.
    public interface Printing {
        PrintService with(PrintStyle style, String palette, PrintLedger ledger);
    }

    /// @param printers by the name of a palette
    public PrintTasks(
            Printing printing,
            Function<PrintStyle, DocumentAssembler> documents,
            Function<String, Printer> printers,
            PrintLedger ledger,
            Supplier<LocalDateTime> now) {
        this.printing = printing;
        this.documents = documents;
        this.printers = printers;
        this.ledger = ledger;
        this.now = now;
    }

    /// Prints it, and writes down that this person did.
    ///
    /// @param progress hears how many pages are written
    /// @throws org.benchleaf.app.Refusal when a size is not there, or nothing is left to be printed
    public PressOutcome print(PrintTask task, String who, IntConsumer progress, Path file) {
        return press(task, ledger.by(who), progress, file);
    }

    /// Makes the file and says what was found; nothing is written down.
    ///
    /// @throws org.benchleaf.app.Refusal as for a print
    public PressOutcome rehearse(PrintTask task, Path file) {
        return press(task, new Unwritten(ledger), pages -> {}, file);
    }

    private PressOutcome press(PrintTask task, PrintLedger own, IntConsumer progress, Path file) {
        PrintService service = printing.with(task.style(), task.palette(), own);
        PressOrder order = new PressOrder(task.press(), true, false, progress);
        return switch (task.document()) {
            case PrintTask.Document.Cards(var format, boolean priced) ->
                service.cards().print(task.wanted(), priced, format, task.order(), order, file);
            case PrintTask.Document.Labels(var run, boolean byCount) ->
                service.labels().print(task.wanted(), byCount, run, task.order(), order, file);
            case PrintTask.Document.Sheets(var format) ->
                service.sheets().print(plants(task, service), format, false, order, file);
            case PrintTask.Document.Availability(var format, boolean all) -> {
                DocumentAssembler assembler = documents.apply(task.style());
                List<PlantRecord> listed = task.wanted().isEmpty() ? assembler.forSale() : plants(task, service);
                var list = assembler.availability(listed, now.get(), all);
                yield new PressOutcome(
                        PressRoom.write(
                                file,
                                out -> printers.apply(task.palette())
                                        .on(task.press())
                                        .availability(list, format, task.style(), out)),
                        List.<PrintFinding>of());
            }
        };
    }

    /// Each plant once, however many sizes of it are wanted.
    private static List<PlantRecord> plants(PrintTask task, PrintService service) {
        return service.inOrder(new ArrayList<>(task.wanted()), task.order()).stream()
                .map(Wanted::plant)
                .distinct()
                .toList();
    }

    /// A ledger that can be read, and forgets what it is told.
    private record Unwritten(PrintLedger ledger) implements PrintLedger {
        @Override
        public void add(List<PrintEntry> printed) {}

        @Override
        public PrintLedger by(String who) {
            return this;
        }

        @Override
        public List<PrintedEntry> newest(String document, Instant since) {
            return ledger.newest(document, since);
        }

        @Override
        public List<PrintedEntry> last(int most) {
            return ledger.last(most);
        }

        @Override
        public List<PrintedBase> bases() {
            return ledger.bases();
        }
    }
}
