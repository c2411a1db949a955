package org.benchleaf.render.figure;

import java.util.List;
import java.util.Locale;

/// Writes a figure as an inline `svg` element for HTML. Parts of the page take their color from the style sheet
/// (`--fig-text` ...), so that they turn over on a dark screen; colors of the plant stay.
public final class SvgWriter {
    private SvgWriter() {}

    /// @param id starts the ids of title and description; unique in the page
    public static String write(Figure figure, String id) {
        StringBuilder svg = new StringBuilder(4096);
        svg.append("<svg class=\"figure\" role=\"img\" viewBox=\"0 0 ")
                .append(number(figure.width()))
                .append(' ')
                .append(number(figure.height()))
                .append("\" aria-labelledby=\"")
                .append(id)
                .append("-t ")
                .append(id)
                .append("-d\"><title id=\"")
                .append(id)
                .append("-t\">")
                .append(escape(figure.title()))
                .append("</title><desc id=\"")
                .append(id)
                .append("-d\">")
                .append(escape(figure.alternative()))
                .append("</desc>");
        marks(svg, figure.marks(), id);
        return svg.append("</svg>").toString();
    }

    private static void marks(StringBuilder svg, List<Mark> marks, String id) {
        for (Mark mark : marks) {
            switch (mark) {
                case Mark.Area(Path path, Ink ink) ->
                    svg.append("<path fill=\"")
                            .append(color(ink))
                            .append("\" d=\"")
                            .append(data(path))
                            .append("\"/>");
                case Mark.Line(Path path, Ink ink, double width) ->
                    svg.append("<path fill=\"none\" stroke-linecap=\"round\" stroke=\"")
                            .append(color(ink))
                            .append("\" stroke-width=\"")
                            .append(number(width))
                            .append("\" d=\"")
                            .append(data(path))
                            .append("\"/>");
                case Mark.Words words -> words(svg, words);
                case Mark.Within within -> within(svg, within, id);
            }
        }
    }

    private static void words(StringBuilder svg, Mark.Words words) {
        svg.append("<text x=\"")
                .append(number(words.x()))
                .append("\" y=\"")
                .append(number(words.y()))
                .append("\" font-size=\"")
                .append(number(words.size()))
                .append(words.strong() ? "\" font-weight=\"600" : "")
                .append(
                        switch (words.anchor()) {
                            case START -> "";
                            case MIDDLE -> "\" text-anchor=\"middle";
                            case END -> "\" text-anchor=\"end";
                        })
                .append("\" fill=\"")
                .append(color(words.ink()))
                .append("\">")
                .append(escape(words.text()))
                .append("</text>");
    }

    private static void within(StringBuilder svg, Mark.Within within, String id) {
        String clip = id + "-c" + svg.length();
        svg.append("<clipPath id=\"")
                .append(clip)
                .append("\"><path d=\"")
                .append(data(Path.rectangle(within.x(), within.y(), within.width(), within.height())))
                .append("\"/></clipPath><g clip-path=\"url(#")
                .append(clip)
                .append(")\">");
        marks(svg, within.marks(), id);
        svg.append("</g>");
    }

    private static String color(Ink ink) {
        return switch (ink) {
            case Ink.Plant(var color) -> color.toString();
            case Ink.Role role -> "var(--fig-" + role.name().toLowerCase(Locale.ROOT) + ")";
        };
    }

    /// Steps from place to place in tenths of a point, which keeps pages small; rounding does not add up, because
    /// each step starts from the rounded place.
    static String data(Path path) {
        StringBuilder data = new StringBuilder();
        long atX = 0;
        long atY = 0;
        for (Path.Step step : path.steps()) {
            switch (step) {
                case Path.Step.Move(double x, double y) -> {
                    data.append('M');
                    tenths(data, Math.round(x * 10));
                    tenths(data, Math.round(y * 10));
                    atX = Math.round(x * 10);
                    atY = Math.round(y * 10);
                }
                case Path.Step.Line(double x, double y) -> {
                    data.append('l');
                    tenths(data, Math.round(x * 10) - atX);
                    tenths(data, Math.round(y * 10) - atY);
                    atX = Math.round(x * 10);
                    atY = Math.round(y * 10);
                }
                case Path.Step.Curve(double x1, double y1, double x2, double y2, double x, double y) -> {
                    data.append('c');
                    for (double[] place : new double[][] {{x1, y1}, {x2, y2}, {x, y}}) {
                        tenths(data, Math.round(place[0] * 10) - atX);
                        tenths(data, Math.round(place[1] * 10) - atY);
                    }
                    atX = Math.round(x * 10);
                    atY = Math.round(y * 10);
                }
                case Path.Step.Close() -> data.append('z');
            }
        }
        return data.toString();
    }

    private static void tenths(StringBuilder data, long tenths) {
        if (tenths >= 0 && Character.isDigit(data.charAt(data.length() - 1))) {
            data.append(' ');
        }
        if (tenths < 0) {
            data.append('-');
        }
        long size = Math.abs(tenths);
        if (size >= 10 || size == 0) {
            data.append(size / 10);
        }
        if (size % 10 != 0) {
            data.append('.').append(size % 10);
        }
    }

    /// Two decimals at most, no exponent, no trailing zeros.
    static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        return sign + whole + (rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest);
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
