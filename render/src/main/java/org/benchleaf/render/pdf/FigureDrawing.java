package org.benchleaf.render.pdf;

import java.util.List;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Ink;
import org.benchleaf.render.figure.Mark;
import org.benchleaf.render.figure.Path;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.shared.color.Srgb;
import org.openpdf.text.pdf.PdfContentByte;

/// Writes a figure as PDF vectors and words.
public record FigureDrawing(Figure figure) implements Drawing {
    @Override
    public double width() {
        return figure.width();
    }

    @Override
    public double height() {
        return figure.height();
    }

    /// An icon says nothing but its title, and stands beside those words.
    @Override
    public String alternative() {
        return figure.alternative().equals(figure.title()) ? "" : figure.alternative();
    }

    @Override
    public String markup(String id, String words) {
        return SvgWriter.write(figure, id);
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        page.saveState();
        page.setLineCap(PdfContentByte.LINE_CAP_ROUND);
        page.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        new Pen(page, shelf, x, top, scale).marks(figure.marks());
        page.restoreState();
    }

    private record Pen(PdfContentByte page, FontShelf shelf, double left, double top, double scale) {
        void marks(List<Mark> marks) {
            for (int at = 0; at < marks.size(); at++) {
                switch (marks.get(at)) {
                    case Mark.Area(Path path, Ink ink) -> {
                        fill(ink);
                        // an area and its edge are one path
                        if (at + 1 < marks.size()
                                && marks.get(at + 1) instanceof Mark.Line(Path edge, Ink line, double width)
                                && edge == path) {
                            pen(line, width);
                            trace(path);
                            page.fillStroke();
                            at++;
                        } else {
                            trace(path);
                            page.fill();
                        }
                    }
                    case Mark.Line(Path path, Ink ink, double width) -> {
                        pen(ink, width);
                        trace(path);
                        page.stroke();
                    }
                    case Mark.Words words -> words(words);
                    case Mark.Within within -> {
                        page.saveState();
                        trace(Path.rectangle(within.x(), within.y(), within.width(), within.height()));
                        page.clip();
                        page.newPath();
                        marks(within.marks());
                        page.restoreState();
                    }
                }
            }
        }

        private void fill(Ink ink) {
            Srgb color = ink.onPaper();
            page.setRGBColorFill(color.red(), color.green(), color.blue());
        }

        private void pen(Ink ink, double width) {
            Srgb color = ink.onPaper();
            page.setRGBColorStroke(color.red(), color.green(), color.blue());
            page.setLineWidth((float) (width * scale));
        }

        private void trace(Path path) {
            for (Path.Step step : path.steps()) {
                switch (step) {
                    case Path.Step.Move(double x, double y) -> page.moveTo(x(x), y(y));
                    case Path.Step.Line(double x, double y) -> page.lineTo(x(x), y(y));
                    case Path.Step.Curve(double x1, double y1, double x2, double y2, double x, double y) ->
                        page.curveTo(x(x1), y(y1), x(x2), y(y2), x(x), y(y));
                    case Path.Step.Close() -> page.closePath();
                }
            }
        }

        private void words(Mark.Words words) {
            Face face = words.strong() ? Face.FACTS_STRONG : Face.FACTS;
            double size = words.size() * scale;
            double width = shelf.width(face, words.text(), size);
            double start = switch (words.anchor()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            fill(words.ink());
            page.beginText();
            page.setFontAndSize(shelf.font(face), (float) size);
            page.setTextMatrix((float) (x(words.x()) - start), y(words.y()));
            page.showText(words.text());
            page.endText();
        }

        private float x(double x) {
            return (float) (left + x * scale);
        }

        private float y(double y) {
            return (float) (top - y * scale);
        }
    }
}
