package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "labels",
        mixinStandardHelpOptions = true,
        description = "Labels for every lot of the plants that holds any, on stock paper.")
final class PrintLabelsCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PrintChoice choice = new PrintChoice();

    @Mixin
    private final PressOptions press = new PressOptions();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter-30",
            description = "stock paper (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(
            names = "--copies",
            paramLabel = "N",
            defaultValue = "1",
            description = "labels of each lot (default: ${DEFAULT-VALUE})")
    private int copies;

    @Option(names = "--copies-from-stock", description = "a label for every plant of a lot, by its count")
    private boolean byCount;

    @Option(
            names = "--used",
            paramLabel = "CELLS",
            defaultValue = "",
            description = "cells of the first sheet already used, for example 1-12,15")
    @SuppressWarnings("NullAway.Init")
    private String used;

    @Option(
            names = "--dpi",
            paramLabel = "DOTS",
            defaultValue = "300",
            description = "dots to the inch of the printer: codes are made of whole ones (default: ${DEFAULT-VALUE})")
    private int dpi;

    @Option(names = "--outdoor", description = "codes that can still be read when a quarter of them is lost")
    private boolean outdoors;

    @Option(names = "--bars", description = "the bars of a till for items that have a trade number")
    private boolean bars;

    @Option(
            names = "--png",
            paramLabel = "FOLDER",
            description = "for a roll printer: one picture of black and white dots a label, besides the PDF")
    private Optional<Path> pictures = Optional.empty();

    @Option(names = "--by-column", description = "fill columns before rows")
    private boolean byColumn;

    @Option(
            names = "--right",
            paramLabel = "MM",
            defaultValue = "0",
            description = "move everything right, against a printer that pulls left")
    private double right;

    @Option(names = "--down", paramLabel = "MM", defaultValue = "0", description = "move everything down")
    private double down;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "labels.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintLabelsCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        if (copies < 1 || copies > 10_000) {
            throw new Refusal(Problem.of("print.copies", Integer.toString(copies)));
        }
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PrintService printing = benchleaf.printing();
            LabelRun run = run(printing);
            List<Wanted> wanted = choice.in(benchleaf, Optional.of(copies));
            PressOutcome outcome;
            try (PressProgress progress = new PressProgress(console.err(), benchleaf.wording(), wanted.size())) {
                outcome = printing.labels(wanted, byCount, run, choice.order(), press.order(benchleaf, progress), file);
            }
            if (outcome.pages() > 0 && pictures.isPresent()) {
                printing.labelPictures(wanted, byCount, run, choice.order(), pictures.get());
            }
            int sheets = outcome.pages();
            return press.report(
                    outcome,
                    file + ": " + sheets + (sheets == 1 ? " sheet" : " sheets") + " of " + paper,
                    benchleaf,
                    console);
        }
    }

    private LabelRun run(PrintService printing) {
        var order = byColumn ? LabelRun.FillOrder.BY_COLUMN : LabelRun.FillOrder.BY_ROW;
        try {
            return new LabelRun(printing.paper(paper), cells(used), order, right, down).with(dpi, outdoors, bars);
        } catch (IllegalArgumentException impossible) {
            throw new Refusal(Problem.of("print.run", String.valueOf(impossible.getMessage())));
        }
    }

    /// Reads `1-12,15`.
    static Set<Integer> cells(String text) {
        Set<Integer> cells = new TreeSet<>();
        for (String piece : text.split(",")) {
            if (piece.isBlank()) {
                continue;
            }
            String[] ends = piece.strip().split("-", -1);
            try {
                int from = Integer.parseInt(ends[0].strip());
                int to = ends.length == 1 ? from : Integer.parseInt(ends[1].strip());
                if (ends.length > 2 || from < 1 || to < from || to > 1000) {
                    throw new NumberFormatException();
                }
                for (int cell = from; cell <= to; cell++) {
                    cells.add(cell);
                }
            } catch (NumberFormatException notCells) {
                throw new Refusal(Problem.of("print.cells", text));
            }
        }
        return cells;
    }
}
