package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.benchleaf.content.Palette;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PlacedPage;
import org.benchleaf.shared.color.Srgb;

/// Puts measured words in their places on a page. Places in mm.
final class Placing {
    private static final double POINT_MM = TextBlock.POINT_MM;

    private final FontShelf shelf;
    private final Palette palette;
    private final List<PlacedPage.Part> parts = new ArrayList<>();

    /// @param palette the inks of words and lines
    Placing(FontShelf shelf, Palette palette) {
        this.shelf = shelf;
        this.palette = palette;
    }

    /// What has its place so far, in the order in which it is read.
    List<PlacedPage.Part> parts() {
        return parts;
    }

    void add(PlacedPage.Part part) {
        parts.add(part);
    }

    Srgb ink(String name) {
        return palette.ink(name);
    }

    /// The heading of the page.
    void heading(TextBlock block, double left, double top) {
        words(true, block, top, line -> left, face -> ink("ink"));
    }

    /// A paragraph; none when there are no words.
    void words(TextBlock block, double left, double top, String ink) {
        words(false, block, top, line -> left, face -> ink(ink));
    }

    /// The same in an ink for each face.
    void words(TextBlock block, double left, double top, Function<Face, Srgb> inks) {
        words(false, block, top, line -> left, inks);
    }

    /// The same, each line ending at the right.
    void wordsAtTheRight(TextBlock block, double right, double top, String ink) {
        words(false, block, top, line -> right - width(line, block.size()) * POINT_MM, face -> ink(ink));
    }

    /// One line in one face.
    static TextBlock line(String text, Face face, double size, double leading) {
        return text.isEmpty()
                ? TextBlock.none()
                : new TextBlock(size, leading, List.of(new TextLine(List.of(TextRun.of(text, face)))));
    }

    /// In points.
    double width(TextLine line, double size) {
        return line.runs().stream()
                .mapToDouble(run -> shelf.width(Face.named(run.face()), run.text(), size))
                .sum();
    }

    /// From the upper edge of a block to its first baseline in mm: of all its faces the one that stands lowest decides,
    /// so that all lines stand alike.
    double firstBaseline(TextBlock block) {
        double under = block.lines().stream()
                .flatMap(line -> line.runs().stream())
                .mapToDouble(run -> shelf.baselineUnderMiddle(Face.named(run.face())))
                .max()
                .orElse(0);
        return (block.leading() / 2 + block.size() * under) * POINT_MM;
    }

    private void words(
            boolean heading, TextBlock block, double top, Function<TextLine, Double> left, Function<Face, Srgb> inks) {
        if (block.isEmpty()) {
            return;
        }
        List<PlacedPage.Line> lines = new ArrayList<>();
        double baseline = top + firstBaseline(block);
        for (TextLine line : block.lines()) {
            lines.add(new PlacedPage.Line(
                    left.apply(line),
                    baseline,
                    line.runs().stream()
                            .map(run -> piece(run, block.size(), inks))
                            .toList()));
            baseline += block.leading() * POINT_MM;
        }
        add(new PlacedPage.Part.Words(heading, lines));
    }

    private static PlacedPage.Piece piece(TextRun run, double size, Function<Face, Srgb> inks) {
        Face face = Face.named(run.face());
        return new PlacedPage.Piece(face, run.text(), size, inks.apply(face));
    }
}
