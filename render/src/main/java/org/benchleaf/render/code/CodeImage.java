package org.benchleaf.render.code;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.benchleaf.shared.code.LiveLink;

/// A QR code of a live link: level M, the address in capitals, so that the alphanumeric mode serves, with the quiet
/// zone of four modules that ISO/IEC 18004 asks for.
public final class CodeImage {
    private static final int QUIET = 4;
    private static final int DPI = 300;
    private static final double INCH_MM = 25.4;
    /// Smallest module in dots of 1/300 in: five are 0.423 mm, the first size above 0.4 mm that is whole at 300 dpi.
    private static final int LEAST_DOTS = 5;

    private final ByteMatrix matrix;

    private CodeImage(ByteMatrix matrix) {
        this.matrix = matrix;
    }

    public static CodeImage of(LiveLink link) {
        try {
            return new CodeImage(
                    Encoder.encode(link.forCode(), ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no QR code holds " + link, tooLong);
        }
    }

    /// Modules along one side, both quiet zones included.
    public int sideInModules() {
        return matrix.getWidth() + 2 * QUIET;
    }

    /// The largest module that fits a square, in whole dots of 1/300 in, which are whole at 600 dpi as well.
    ///
    /// @param boxMm side of the square in mm
    /// @return empty when even the smallest readable module does not fit
    public OptionalInt dotsThatFit(double boxMm) {
        int dots = (int) Math.floor(boxMm / INCH_MM * DPI / sideInModules() + 1e-9);
        return dots < LEAST_DOTS ? OptionalInt.empty() : OptionalInt.of(dots);
    }

    /// Module in mm that a square would allow, for messages.
    public double moduleMm(double boxMm) {
        return boxMm / sideInModules();
    }

    /// Smallest module in mm.
    public static double leastModuleMm() {
        return LEAST_DOTS * INCH_MM / DPI;
    }

    /// A run of dark modules.
    ///
    /// @param x modules from the left edge of the quiet zone
    /// @param y modules from its upper edge
    public record Run(int x, int y, int length) {}

    /// All dark modules, row by row.
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (int y = 0; y < matrix.getHeight(); y++) {
            int x = 0;
            while (x < matrix.getWidth()) {
                if (matrix.get(x, y) != 1) {
                    x++;
                    continue;
                }
                int from = x;
                while (x < matrix.getWidth() && matrix.get(x, y) == 1) {
                    x++;
                }
                runs.add(new Run(from + QUIET, y + QUIET, x - from));
            }
        }
        return runs;
    }
}
