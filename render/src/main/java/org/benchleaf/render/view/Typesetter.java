package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.NamePart;

/// Sets texts in lines that fit: first smaller, then on more lines, then not at all, with the reason.
final class Typesetter {
    private static final double STEP = 0.5;

    private static final Pattern SPACES = Pattern.compile("\\s+");

    private final FontShelf shelf;

    Typesetter(FontShelf shelf) {
        this.shelf = shelf;
    }

    /// The words of a name in the type that the codes ask for: Latin in italics, marks and ranks in roman, a trade
    /// designation in another face.
    ///
    /// @param strong semibold instead of medium
    static List<Word> words(BotanicalName name, boolean strong) {
        Face roman = strong ? Face.NAMES_STRONG : Face.NAMES;
        List<Word> words = new ArrayList<>();
        boolean held = false;
        for (NamePart part : name.parts()) {
            Face face = switch (part.type()) {
                case LATIN -> strong ? Face.NAMES_STRONG_ITALIC : Face.NAMES_ITALIC;
                case ROMAN, CULTIVAR -> roman;
                case TRADE -> Face.FACTS_STRONG;
            };
            boolean first = true;
            // a rank stays on the line of the epithet that it belongs to
            boolean rank = part.type() == NamePart.Type.ROMAN && part.text().endsWith(".");
            for (String word : printed(part).split(" ")) {
                words.add(new Word(
                        rank ? word + '\u00A0' : word,
                        face,
                        !held && (!first || part.spaced()),
                        first && part.spaced() && part.type() != NamePart.Type.LATIN));
                first = false;
            }
            held = rank;
        }
        return words;
    }

    /// A cultivar's quotes as printers set them.
    private static String printed(NamePart part) {
        if (part.type() != NamePart.Type.CULTIVAR) {
            return part.text();
        }
        String epithet = part.text().substring(1, part.text().length() - 1);
        return "‘" + epithet.replace('\'', '’') + "’";
    }

    static List<Word> words(String text, Face face) {
        List<Word> words = new ArrayList<>();
        for (String word : SPACES.split(text.strip())) {
            words.add(new Word(word, face, !words.isEmpty(), false));
        }
        return words;
    }

    /// @param widthPt of the measure in points
    /// @param subject the plant or label, for the message
    /// @param field what is set, for the message
    /// @throws PrintRefused when it does not fit in the smallest type on the most lines
    TextBlock set(List<Word> words, double widthPt, TypeRange range, String subject, String field) {
        Measured measured = new Measured(words, shelf);
        for (int lines = 1; lines <= range.lines(); lines++) {
            double least = lines < range.lines() ? range.leastWhileFewer() : range.least();
            for (double size = range.largest(); size >= least; size -= STEP) {
                Optional<List<TextLine>> broken = breakInto(measured, widthPt / size, lines);
                if (broken.isPresent()) {
                    return new TextBlock(size, size * range.leading(), broken.get());
                }
            }
        }
        throw new PrintRefused(Problem.of("print.overflow", text(words))
                .with("name", subject)
                .with("field", field)
                .with("least", String.format(Locale.ROOT, "%.1f", range.least())));
    }

    /// Running text in one size, on as many lines as it takes.
    ///
    /// @throws PrintRefused when one word alone is wider than the measure
    TextBlock flow(List<Word> words, double widthPt, double size, double leading, String subject, String field) {
        Measured measured = new Measured(words, shelf);
        List<TextLine> lines = new ArrayList<>();
        int from = 0;
        while (from < words.size()) {
            int to = from + 1;
            while (to < words.size() && (!words.get(to).spaced() || measured.width(from, to + 1) * size <= widthPt)) {
                to++;
            }
            if (measured.width(from, to) * size > widthPt) {
                throw new PrintRefused(Problem.of("print.overflow", text(words.subList(from, to)))
                        .with("name", subject)
                        .with("field", field)
                        .with("least", String.format(Locale.ROOT, "%.1f", size)));
            }
            lines.add(line(words.subList(from, to)));
            from = to;
        }
        return new TextBlock(size, leading, lines);
    }

    /// The break into so many lines that leaves them most even, parts of a name kept together where that fits.
    private static Optional<List<TextLine>> breakInto(Measured words, double measure, int lines) {
        List<Integer> best = new ArrayList<>();
        double[] cost = {Double.MAX_VALUE};
        search(words, measure, lines, 0, new ArrayList<>(), 0, best, cost);
        if (cost[0] == Double.MAX_VALUE) {
            return Optional.empty();
        }
        List<TextLine> set = new ArrayList<>();
        int from = 0;
        for (int to : best) {
            set.add(line(words.words.subList(from, to)));
            from = to;
        }
        return Optional.of(set);
    }

    private static void search(
            Measured words,
            double measure,
            int lines,
            int from,
            List<Integer> ends,
            double costSoFar,
            List<Integer> best,
            double[] cost) {
        int count = words.words.size();
        if (lines == 1) {
            double width = words.width(from, count);
            double total = costSoFar + square(measure - width) * 0.6;
            if (width <= measure && total < cost[0]) {
                cost[0] = total;
                best.clear();
                best.addAll(ends);
                best.add(count);
            }
            return;
        }
        for (int to = from + 1; to < count; to++) {
            double width = words.width(from, to);
            if (width > measure) {
                return;
            }
            Word next = words.words.get(to);
            if (!next.spaced()) {
                continue;
            }
            double slack = next.startsPart() ? square((measure - width) * 0.45) : square(measure - width);
            ends.add(to);
            search(words, measure, lines - 1, to, ends, costSoFar + slack, best, cost);
            ends.removeLast();
        }
    }

    /// Words with their widths in ems, points at a size of one point: many breaks are tried on the same words.
    private static final class Measured {
        private final List<Word> words;
        private final double[] widths;
        private final double[] spaces;

        Measured(List<Word> words, FontShelf shelf) {
            this.words = words;
            this.widths = new double[words.size()];
            this.spaces = new double[words.size()];
            for (int at = 0; at < words.size(); at++) {
                Word word = words.get(at);
                widths[at] = shelf.width(word.face(), word.text(), 1);
                spaces[at] = word.spaced() ? shelf.width(word.face(), " ", 1) : 0;
            }
        }

        /// On one line; the space before the first is not set.
        double width(int from, int to) {
            double width = 0;
            for (int at = from; at < to; at++) {
                width += (at > from ? spaces[at] : 0) + widths[at];
            }
            return width;
        }
    }

    /// Numbers held together with their units by spaces that do not break.
    static String joined(String length) {
        return length.replace(' ', '\u00A0');
    }

    private static double square(double value) {
        return value * value;
    }

    /// Words of one face joined into runs.
    private static TextLine line(List<Word> words) {
        List<TextRun> runs = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Face face = words.getFirst().face();
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            if (word.face() != face) {
                runs.add(TextRun.of(text.toString(), face));
                text.setLength(0);
                face = word.face();
            }
            text.append(word.spaced() && i > 0 ? " " : "").append(word.text());
        }
        runs.add(TextRun.of(text.toString(), face));
        return new TextLine(runs);
    }

    private static String text(List<Word> words) {
        StringBuilder text = new StringBuilder();
        words.forEach(
                word -> text.append(word.spaced() && !text.isEmpty() ? " " : "").append(word.text()));
        return text.toString();
    }

    /// A name on one line without limits, for tables and lists.
    static TextLine line(BotanicalName name, boolean strong) {
        return line(words(name, strong));
    }
}
