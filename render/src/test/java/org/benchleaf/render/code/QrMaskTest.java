package org.benchleaf.render.code;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Against the library, which tries all eight masks module by module (ZXing core 3.5.4): the same mask, and so the same
/// modules.
class QrMaskTest {
    private static final String LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

    static Stream<String> addresses() {
        SplittableRandom random = new SplittableRandom(18004);
        return IntStream.rangeClosed(1, 300).mapToObj(number -> {
            StringBuilder text = new StringBuilder("HTTPS://PLANTS.EXAMPLE/");
            for (int letter = 0; letter < number % 150; letter++) {
                text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            return number % 3 == 0 ? text.toString().toLowerCase(java.util.Locale.ROOT) : text.toString();
        });
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void theMaskIsTheOneThatTheLibraryChooses(String address) throws WriterException {
        assertSame(address, CodeImage.Damage.SOME, ErrorCorrectionLevel.M);
        assertSame(address, CodeImage.Damage.MUCH, ErrorCorrectionLevel.Q);
    }

    private static void assertSame(String address, CodeImage.Damage damage, ErrorCorrectionLevel level)
            throws WriterException {
        ByteMatrix expected = Encoder.encode(address, level).getMatrix();
        CodeImage code = CodeImage.of(address, address, damage);
        boolean[][] dark = new boolean[code.sideInModules()][code.sideInModules()];
        for (CodeImage.Block block : code.blocks()) {
            for (int y = block.y(); y < block.y() + block.height(); y++) {
                Arrays.fill(dark[y], block.x(), block.x() + block.width(), true);
            }
        }
        int quiet = (code.sideInModules() - expected.getWidth()) / 2;
        for (int y = 0; y < expected.getHeight(); y++) {
            for (int x = 0; x < expected.getWidth(); x++) {
                assertThat(dark[y + quiet][x + quiet]).isEqualTo(expected.get(x, y) == 1);
            }
        }
    }
}
