package org.benchleaf.render.code;

import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.List;
import java.util.stream.IntStream;

/// Chooses the mask of a QR code (ISO/IEC 18004:2015, 7.8): of the eight patterns the one that leaves the fewest things
/// that disturb a reader. The library does the same one module at a time, and that was two thirds of the time of a
/// label; here a row is one number and a rule a few of its bits' operations.
final class QrMask {
    private static final int MASKS = 8;
    /// Rows that fit one number: version 11.
    static final int LARGEST_SIDE = Long.SIZE - 3;
    /// Format information: generator, mask (annex C).
    private static final int FORMAT_GENERATOR = 0x537;

    private static final int FORMAT_MASK = 0x5412;

    /// Where each mask turns modules over, on a code of any size.
    private static final List<Grid> PATTERNS =
            IntStream.range(0, MASKS).mapToObj(QrMask::pattern).toList();

    private final int side;
    private final int level;
    /// Modules that masks turn over; all others are the same by every mask.
    private final Grid free;

    private final Grid unmasked;

    /// One code by rows and by columns, the first module lowest.
    private record Grid(long[] rows, long[] columns) {
        Grid(int side) {
            this(new long[side], new long[side]);
        }

        boolean dark(int x, int y) {
            return (rows[y] >>> x & 1) == 1;
        }

        void set(int x, int y, boolean dark) {
            rows[y] = dark ? rows[y] | 1L << x : rows[y] & ~(1L << x);
            columns[x] = dark ? columns[x] | 1L << y : columns[x] & ~(1L << y);
        }
    }

    private QrMask(QRCode code) {
        ByteMatrix matrix = code.getMatrix();
        this.side = matrix.getWidth();
        this.level = code.getECLevel().getBits();
        this.free = free(code.getVersion(), side);
        Grid grid = new Grid(side);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                if (matrix.get(x, y) == 1) {
                    grid.set(x, y, true);
                }
            }
        }
        this.unmasked = turned(grid, code.getMaskPattern());
    }

    /// Puts the best mask on a code that has any.
    ///
    /// @param code of at most [#LARGEST_SIDE] modules
    static void choose(QRCode code) {
        QrMask mask = new QrMask(code);
        Grid best = mask.masked(0);
        int least = mask.penalty(best);
        for (int pattern = 1; pattern < MASKS; pattern++) {
            Grid grid = mask.masked(pattern);
            int penalty = mask.penalty(grid);
            if (penalty < least) {
                least = penalty;
                best = grid;
            }
        }
        for (int y = 0; y < mask.side; y++) {
            for (int x = 0; x < mask.side; x++) {
                code.getMatrix().set(x, y, best.dark(x, y));
            }
        }
    }

    /// Table 10: where a mask turns a module over.
    private static boolean turns(int pattern, int x, int y) {
        return switch (pattern) {
            case 0 -> (x + y) % 2 == 0;
            case 1 -> y % 2 == 0;
            case 2 -> x % 3 == 0;
            case 3 -> (x + y) % 3 == 0;
            case 4 -> (y / 2 + x / 3) % 2 == 0;
            case 5 -> x * y % 2 + x * y % 3 == 0;
            case 6 -> (x * y % 2 + x * y % 3) % 2 == 0;
            default -> ((x + y) % 2 + x * y % 3) % 2 == 0;
        };
    }

    private static Grid pattern(int pattern) {
        Grid grid = new Grid(LARGEST_SIDE);
        for (int y = 0; y < LARGEST_SIDE; y++) {
            for (int x = 0; x < LARGEST_SIDE; x++) {
                grid.set(x, y, turns(pattern, x, y));
            }
        }
        return grid;
    }

    private Grid turned(Grid grid, int pattern) {
        Grid turning = PATTERNS.get(pattern);
        Grid turned = new Grid(side);
        for (int at = 0; at < side; at++) {
            turned.rows()[at] = grid.rows()[at] ^ turning.rows()[at] & free.rows()[at];
            turned.columns()[at] = grid.columns()[at] ^ turning.columns()[at] & free.columns()[at];
        }
        return turned;
    }

    private Grid masked(int pattern) {
        Grid grid = turned(unmasked, pattern);
        format(grid, pattern);
        return grid;
    }

    /// Both copies of the format information, which names the mask (7.9).
    private void format(Grid grid, int pattern) {
        int data = level << 3 | pattern;
        int rest = data << 10;
        for (int bit = 14; bit >= 10; bit--) {
            if ((rest >> bit & 1) == 1) {
                rest ^= FORMAT_GENERATOR << bit - 10;
            }
        }
        int bits = (data << 10 | rest) ^ FORMAT_MASK;
        for (int bit = 0; bit < 15; bit++) {
            boolean dark = (bits >> bit & 1) == 1;
            if (bit < 8) {
                grid.set(8, bit < 6 ? bit : bit + 1, dark);
                grid.set(side - 1 - bit, 8, dark);
            } else {
                grid.set(bit == 8 ? 7 : 14 - bit, 8, dark);
                grid.set(8, side - 15 + bit, dark);
            }
        }
    }

    /// All but finders with what surrounds them, timing, alignment and version information.
    private static Grid free(Version version, int side) {
        Grid free = new Grid(side);
        keep(free, 0, 0, side, side, true);
        keep(free, 0, 0, 9, 9, false);
        keep(free, side - 8, 0, 8, 9, false);
        keep(free, 0, side - 8, 9, 8, false);
        keep(free, 0, 6, side, 1, false);
        keep(free, 6, 0, 1, side, false);
        int[] centers = version.getAlignmentPatternCenters();
        for (int y : centers) {
            for (int x : centers) {
                boolean onFinder = x < 8 && y < 8 || x < 8 && y > side - 9 || x > side - 9 && y < 8;
                if (!onFinder) {
                    keep(free, x - 2, y - 2, 5, 5, false);
                }
            }
        }
        if (version.getVersionNumber() >= 7) {
            keep(free, side - 11, 0, 3, 6, false);
            keep(free, 0, side - 11, 6, 3, false);
        }
        return free;
    }

    private static void keep(Grid free, int left, int top, int width, int height, boolean kept) {
        long across = (1L << width) - 1 << left;
        for (int y = top; y < top + height; y++) {
            free.rows()[y] = kept ? free.rows()[y] | across : free.rows()[y] & ~across;
        }
        long down = (1L << height) - 1 << top;
        for (int x = left; x < left + width; x++) {
            free.columns()[x] = kept ? free.columns()[x] | down : free.columns()[x] & ~down;
        }
    }

    /// What disturbs a reader (7.8.3.1, table 11).
    private int penalty(Grid grid) {
        int dark = 0;
        int penalty = 0;
        for (int at = 0; at < side; at++) {
            dark += Long.bitCount(grid.rows()[at]);
            penalty += line(grid.rows()[at]) + line(grid.columns()[at]);
            if (at + 1 < side) {
                penalty += blocks(grid.rows()[at], grid.rows()[at + 1]);
            }
        }
        int all = side * side;
        return penalty + Math.abs(dark * 2 - all) * 10 / all * 10;
    }

    /// Five or more alike in a row, and what looks like a finder.
    private int line(long line) {
        long all = (1L << side) - 1;
        long alike = ~(line ^ line >>> 1) & all >>> 1;
        long runs = alike & alike >>> 1 & alike >>> 2 & alike >>> 3;
        int penalty = Long.bitCount(runs) + 2 * Long.bitCount(runs & ~(runs << 1));
        long light = ~line & all;
        long four = light & light >>> 1 & light >>> 2 & light >>> 3;
        long finder = line & light >>> 1 & line >>> 2 & line >>> 3 & line >>> 4 & light >>> 5 & line >>> 6;
        return penalty + 40 * Long.bitCount(finder & (four << 4 | four >>> 7));
    }

    /// Two by two alike.
    private int blocks(long upper, long lower) {
        long inside = (1L << side - 1) - 1;
        long level = ~(upper ^ upper >>> 1);
        long upright = ~(upper ^ lower);
        return 3 * Long.bitCount(level & upright & upright >>> 1 & inside);
    }
}
