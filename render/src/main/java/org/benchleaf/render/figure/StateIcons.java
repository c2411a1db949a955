package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// Small signs of how a crop looks, 12 by 12 points, in ink alone so that they print on any machine: each is told from
/// the others by its outline.
public final class StateIcons {
    private static final Ink INK = Ink.Role.TEXT;

    /// What is seen of a crop, in groups that a list can show.
    public enum State {
        BUD,
        BLOOM,
        COLOR,
        WINTER,
        FRUIT,
        GROWTH,
        CUT,
        FULL,
        REST;

        /// Its name among words and drawings.
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private StateIcons() {}

    /// @param meaning in words
    public static Figure draw(State state, String meaning) {
        List<Mark> marks = new ArrayList<>();
        switch (state) {
            case BUD -> {
                line(marks, Path.line(6, 11, 6, 7.4));
                marks.add(new Mark.Area(
                        Path.from(6, 1.4)
                                .curve(9, 4, 8.6, 8, 6, 8)
                                .curve(3.4, 8, 3, 4, 6, 1.4)
                                .close()
                                .build(),
                        INK));
            }
            case BLOOM -> {
                for (int petal = 0; petal < 5; petal++) {
                    double a = petal * 2 * Math.PI / 5;
                    marks.add(new Mark.Area(Path.circle(6 + 3.3 * Math.sin(a), 6 - 3.3 * Math.cos(a), 2), INK));
                }
                marks.add(new Mark.Area(Path.circle(6, 6, 1.5), Ink.Role.PAPER));
            }
            case COLOR -> {
                marks.add(new Mark.Area(leaf(), INK));
                marks.add(new Mark.Line(Path.line(3.2, 8.8, 8.4, 3.6), Ink.Role.PAPER, 0.8));
                line(marks, Path.line(1.6, 10.4, 3.2, 8.8));
            }
            case WINTER -> {
                for (int arm = 0; arm < 3; arm++) {
                    double a = arm * Math.PI / 3;
                    line(
                            marks,
                            Path.line(
                                    6 + 4.8 * Math.sin(a),
                                    6 - 4.8 * Math.cos(a),
                                    6 - 4.8 * Math.sin(a),
                                    6 + 4.8 * Math.cos(a)));
                }
            }
            case FRUIT -> {
                line(marks, Path.from(3.6, 7).curve(4, 4, 6, 2, 8.6, 1.4).build());
                line(marks, Path.from(8.4, 7.6).curve(8.6, 5, 8.4, 3, 8.6, 1.4).build());
                marks.add(new Mark.Area(Path.circle(3.5, 8.6, 2.2), INK));
                marks.add(new Mark.Area(Path.circle(8.5, 9.2, 2.2), INK));
            }
            case GROWTH -> {
                line(marks, Path.line(6, 11, 6, 5));
                line(
                        marks,
                        Path.from(6, 7)
                                .curve(3.4, 7, 2, 5.4, 1.8, 3)
                                .curve(4.4, 3.2, 6, 4.6, 6, 7)
                                .build());
                line(
                        marks,
                        Path.from(6, 5)
                                .curve(8.6, 5, 10, 3.4, 10.2, 1)
                                .curve(7.6, 1.2, 6, 2.6, 6, 5)
                                .build());
            }
            case CUT -> {
                line(marks, Path.line(2, 9.6, 10, 9.6));
                for (double x = 3; x <= 9; x += 2) {
                    line(marks, Path.line(x, 9.6, x, 5.4));
                }
                marks.add(new Mark.Line(Path.line(1.4, 3.2, 10.6, 3.2), INK, 0.7));
            }
            case FULL -> {
                marks.add(new Mark.Area(
                        Path.from(1.4, 10)
                                .curve(0.6, 2.6, 11.4, 2.6, 10.6, 10)
                                .close()
                                .build(),
                        INK));
            }
            case REST -> {
                line(
                        marks,
                        Path.from(1.4, 10)
                                .curve(0.6, 2.6, 11.4, 2.6, 10.6, 10)
                                .close()
                                .build());
            }
        }
        return new Figure(12, 12, marks, meaning, meaning);
    }

    private static Path leaf() {
        return Path.from(2.6, 9.4)
                .curve(2.2, 4.6, 5, 1.8, 10.2, 1.6)
                .curve(10.4, 6.8, 7.4, 9.8, 2.6, 9.4)
                .close()
                .build();
    }

    private static void line(List<Mark> marks, Path path) {
        marks.add(new Mark.Line(path, INK, 1));
    }
}
