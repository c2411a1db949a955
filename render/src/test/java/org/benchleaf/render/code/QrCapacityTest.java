package org.benchleaf.render.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Codes against the capacities of ISO/IEC 18004 as two independent open implementations hold them
/// (`check-values/qr-capacity.csv`: npm qrcode 1.5.4 and ZXing core 3.5.3, all 160 rows the same; anchors of version 40
/// published elsewhere). An address that just fits a version gets it, and one character more gets the next.
class QrCapacityTest {
    private static final int QUIET_ZONES = 8;
    private static final int LARGEST = 177;

    record Capacity(int version, int modules, CodeImage.Damage damage, int alphanumeric, int bytes) {}

    static Stream<Capacity> table() throws IOException {
        try (InputStream file = Objects.requireNonNull(
                QrCapacityTest.class.getResourceAsStream("/check-values/qr-capacity.csv"), "the table")) {
            List<String> lines = new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            return lines.stream()
                    .skip(1)
                    .map(line -> line.split(","))
                    .filter(cells -> cells[2].equals("M") || cells[2].equals("Q"))
                    .map(cells -> new Capacity(
                            Integer.parseInt(cells[0]),
                            Integer.parseInt(cells[1]),
                            cells[2].equals("M") ? CodeImage.Damage.SOME : CodeImage.Damage.MUCH,
                            Integer.parseInt(cells[5]),
                            Integer.parseInt(cells[6])));
        }
    }

    private static int modules(String text, CodeImage.Damage damage) {
        return CodeImage.of(text, text, damage).sideInModules() - QUIET_ZONES;
    }

    @ParameterizedTest
    @MethodSource("table")
    void anAddressInCapitalsGetsTheVersionThatHoldsIt(Capacity row) {
        assertThat(modules("A".repeat(row.alphanumeric()), row.damage())).isEqualTo(row.modules());
        if (row.modules() < LARGEST) {
            assertThat(modules("A".repeat(row.alphanumeric() + 1), row.damage()))
                    .isEqualTo(row.modules() + 4);
        }
    }

    @ParameterizedTest
    @MethodSource("table")
    void anAddressInSmallLettersGetsTheVersionThatHoldsIt(Capacity row) {
        assertThat(modules("a".repeat(row.bytes()), row.damage())).isEqualTo(row.modules());
        if (row.modules() < LARGEST) {
            assertThat(modules("a".repeat(row.bytes() + 1), row.damage())).isEqualTo(row.modules() + 4);
        }
    }
}
