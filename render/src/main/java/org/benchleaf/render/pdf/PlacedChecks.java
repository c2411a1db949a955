package org.benchleaf.render.pdf;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.shared.color.Srgb;

/// Looks at a page whose parts have their places: whether its words stand out from the paper, and whether its drawings
/// are fit to print.
final class PlacedChecks {
    private static final Srgb PAPER = new Srgb(0xFF, 0xFF, 0xFF);

    private PlacedChecks() {}

    static void check(PlacedPage page, Consumer<PrintFinding> findings) {
        Set<Srgb> told = new HashSet<>();
        for (PlacedPage.Part part : page.parts()) {
            switch (part) {
                case PlacedPage.Part.Figure figure ->
                    figure.drawing()
                            .faults()
                            .forEach(fault -> findings.accept(PrintFinding.of(
                                    page.name(), fault.details().getOrDefault("field", "figure"), fault)));
                case PlacedPage.Part.Words words ->
                    words.lines().stream()
                            .flatMap(line -> line.pieces().stream())
                            .filter(piece -> contrast(piece) < PageChecks.LEAST_CONTRAST && told.add(piece.ink()))
                            .forEach(piece -> findings.accept(PrintFinding.of(
                                    page.name(), "color", PageChecks.hardlyStandsOut(piece.text(), contrast(piece)))));
                case PlacedPage.Part.Rule rule -> {}
            }
        }
    }

    private static double contrast(PlacedPage.Piece piece) {
        return piece.ink().contrastWith(PAPER);
    }
}
