package org.benchleaf.render.code;

import com.google.zxing.ChecksumException;
import com.google.zxing.EncodeHintType;
import com.google.zxing.FormatException;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.code.LiveLink;

/// A QR code of a live link: the address in capitals, so that the alphanumeric mode serves, with the quiet zone of four
/// modules that ISO/IEC 18004 asks for.
public final class CodeImage {
    private static final int QUIET = 4;
    private static final double INCH_MM = 25.4;
    /// Smallest module in mm that a telephone reads at arm's length from a print of everyday sharpness.
    private static final double LEAST_MM = 0.4;

    private final ByteMatrix matrix;
    private final String text;
    private final String address;

    private CodeImage(ByteMatrix matrix, String text, String address) {
        this.matrix = matrix;
        this.text = text;
        this.address = address;
    }

    /// How much of a code may be lost before it cannot be read.
    public enum Damage {
        /// Under a roof: 15 %, level M.
        SOME(ErrorCorrectionLevel.M),
        /// Out of doors, where soil and sun take part of it: 25 %, level Q.
        MUCH(ErrorCorrectionLevel.Q);

        private final ErrorCorrectionLevel level;

        Damage(ErrorCorrectionLevel level) {
            this.level = level;
        }
    }

    public static CodeImage of(LiveLink link) {
        return of(link, Damage.SOME);
    }

    public static CodeImage of(LiveLink link, Damage borne) {
        return of(link.forCode(), link.toString(), borne);
    }

    /// A trade number when there is one to be said, else the live link.
    public static CodeImage of(LiveLink link, Optional<DigitalLink> trade, Damage borne) {
        return trade.map(number -> of(number.toString(), number.toString(), borne))
                .orElseGet(() -> of(link, borne));
    }

    /// @param text exactly what a reader gets
    /// @param address the same as people read it
    public static CodeImage of(String text, String address, Damage borne) {
        try {
            QRCode code = Encoder.encode(text, borne.level, Map.of(EncodeHintType.QR_MASK_PATTERN, 0));
            if (code.getMatrix().getWidth() <= QrMask.LARGEST_SIDE) {
                QrMask.choose(code);
            } else {
                code = Encoder.encode(text, borne.level);
            }
            return new CodeImage(code.getMatrix(), text, address);
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no QR code holds " + address, tooLong);
        }
    }

    /// Where it leads, as people read it.
    public String address() {
        return address;
    }

    /// Whether the modules that are drawn give back what was put in, by the reader of another part of the library.
    public boolean isReadable() {
        int side = matrix.getWidth();
        BitMatrix drawn = new BitMatrix(side);
        for (Block block : blocks()) {
            drawn.setRegion(block.x() - QUIET, block.y() - QUIET, block.width(), block.height());
        }
        try {
            return new Decoder().decode(drawn).getText().equals(text);
        } catch (ChecksumException | FormatException broken) {
            return false;
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
        return dotsThatFit(boxMm, 300);
    }

    /// The same in whole dots of a printer.
    ///
    /// @param dpi dots to the inch
    public OptionalInt dotsThatFit(double boxMm, int dpi) {
        int dots = (int) Math.floor(boxMm / INCH_MM * dpi / sideInModules() + 1e-9);
        return dots < leastDots(dpi) ? OptionalInt.empty() : OptionalInt.of(dots);
    }

    /// Module in mm that a square would allow, for messages.
    public double moduleMm(double boxMm) {
        return boxMm / sideInModules();
    }

    /// Smallest module in mm that is whole at 300 dpi: five dots, 0.423 mm.
    public static double leastModuleMm() {
        return leastDots(300) * INCH_MM / 300;
    }

    private static int leastDots(int dpi) {
        return (int) Math.ceil(LEAST_MM / INCH_MM * dpi);
    }

    /// Dark modules that fill a rectangle.
    ///
    /// @param x modules from the left edge of the quiet zone
    /// @param y modules from its upper edge
    public record Block(int x, int y, int width, int height) {}

    /// All dark modules: each row's runs, joined with those above them where both begin and end alike.
    public List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Block> above = List.of();
        for (int y = 0; y < matrix.getHeight(); y++) {
            List<Block> row = new ArrayList<>();
            int next = 0;
            for (int x = 0; x < matrix.getWidth(); x++) {
                if (matrix.get(x, y) != 1) {
                    continue;
                }
                int from = x;
                while (x < matrix.getWidth() && matrix.get(x, y) == 1) {
                    x++;
                }
                while (next < above.size() && above.get(next).x() < from + QUIET) {
                    blocks.add(above.get(next++));
                }
                boolean goesOn = next < above.size()
                        && above.get(next).x() == from + QUIET
                        && above.get(next).width() == x - from;
                int top = goesOn ? above.get(next++).y() : y + QUIET;
                row.add(new Block(from + QUIET, top, x - from, y + QUIET + 1 - top));
            }
            blocks.addAll(above.subList(next, above.size()));
            above = row;
        }
        blocks.addAll(above);
        return blocks;
    }
}
