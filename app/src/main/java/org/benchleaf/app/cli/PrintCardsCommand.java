package org.benchleaf.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.render.CardFormat;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "cards", mixinStandardHelpOptions = true, description = "One bench card a plant.")
final class PrintCardsCommand extends WorkspaceCommand {
    @Mixin
    private final PrintChoice choice = new PrintChoice();

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final PaperOptions words = new PaperOptions();

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            defaultValue = "large",
            description =
                    "large (5.5 x 7 in), small (4 x 6 in), grand (7 x 11 in), a6 or a5; default: ${DEFAULT-VALUE}")
    @SuppressWarnings("NullAway.Init")
    private CardFormat format;

    @Option(names = "--wide", description = "the card lies instead of standing")
    private boolean wide;

    @Option(names = "--no-price", description = "leave the price out")
    private boolean unpriced;

    @Option(names = "--crop-marks", description = "on larger paper, with marks where to cut and a bar of 100 mm")
    private boolean cropMarks;

    @Option(
            names = "--bleed",
            paramLabel = "MM",
            defaultValue = "0",
            description = "ink beyond the cut, with crop marks; presses usually ask for 3")
    private double bleed;

    @Option(
            names = "--part",
            paramLabel = "N",
            description = "write files of N cards each (cards-1.pdf, cards-2.pdf); a long run can then be stopped")
    private Optional<Integer> part = Optional.empty();

    @Option(names = "--resume", description = "with --part: leave out the files that are there already")
    private boolean resume;

    @Mixin
    private final OutOption out = new OutOption("cards.pdf");

    PrintCardsCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        if (part.isPresent() && part.get() < 1) {
            throw new Refusal(Problem.of("print.part", part.get().toString()));
        }
        List<Wanted> wanted = choice.in(benchleaf, Optional.empty());
        if (part.isEmpty()) {
            return print(benchleaf, wanted, choice.order(), out.file());
        }
        int worst = ErrorReport.DONE;
        List<List<Wanted>> parts = parts(benchleaf.printing().inOrder(wanted, choice.order()), part.get());
        for (int number = 1; number <= parts.size(); number++) {
            Path one = numbered(out.file(), number);
            if (resume && Files.exists(one)) {
                console().out().println(one + ": " + benchleaf.wording().text("print.there-already"));
            } else {
                worst = Math.max(worst, print(benchleaf, parts.get(number - 1), PrintOrder.GIVEN, one));
            }
        }
        return worst;
    }

    private int print(Benchleaf benchleaf, List<Wanted> wanted, PrintOrder order, Path to) {
        int all = wanted.stream().mapToInt(one -> one.copies().orElse(1)).sum();
        PressOutcome outcome;
        try (PressProgress progress = new PressProgress(console().err(), benchleaf.wording(), all)) {
            outcome = benchleaf
                    .printing(words.style(benchleaf))
                    .cards()
                    .print(
                            wanted,
                            !unpriced,
                            wide ? format.wide() : format,
                            order,
                            press.order(benchleaf, bleed, cropMarks || bleed > 0, progress),
                            to);
        }
        return press.report(outcome, written(to, outcome.pages(), "card"), benchleaf, console());
    }

    private static List<List<Wanted>> parts(List<Wanted> all, int size) {
        List<List<Wanted>> parts = new ArrayList<>();
        for (int from = 0; from < all.size(); from += size) {
            parts.add(all.subList(from, Math.min(all.size(), from + size)));
        }
        return parts;
    }

    /// `cards.pdf` becomes `cards-3.pdf`.
    static Path numbered(Path file, int number) {
        String name = file.getFileName().toString();
        int dot = name.toLowerCase(Locale.ROOT).endsWith(".pdf") ? name.length() - 4 : name.length();
        return file.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
    }
}
