package org.benchleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import java.util.OptionalDouble;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthStyle;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final Wording ENGLISH = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);

    private final StringWriter said = new StringWriter();

    private Progress progress(boolean terminal) {
        return new Progress(new PrintWriter(said), ENGLISH, terminal);
    }

    @Test
    void saysNothingOfAShortList() {
        try (Progress progress = progress(true)) {
            progress.read(256, OptionalDouble.of(1));
            progress.written(300, 300);
        }
        assertThat(said.toString()).isEmpty();
    }

    @Test
    void movesABarOnATerminalAndTakesItAway() throws InterruptedException {
        try (Progress progress = progress(true)) {
            Thread.sleep(120);
            progress.read(25_600, OptionalDouble.of(0.5));
        }
        assertThat(said.toString())
                .isEqualTo("\r\u001b[K[###############...............]  50 % 25,600 rows read\r\u001b[K");
    }

    @Test
    void writesALineNowAndThenElsewhere() {
        try (Progress progress = progress(false)) {
            progress.read(19_999, OptionalDouble.empty());
            progress.read(20_000, OptionalDouble.empty());
            progress.written(20_000, 50_000);
        }
        assertThat(said.toString().lines())
                .containsExactly("20,000 rows read ...", "20,000 of 50,000 rows written ...");
    }
}
