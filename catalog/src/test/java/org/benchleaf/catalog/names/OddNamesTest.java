package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Names as lists and labels write them, each with what becomes of it (odd-names.tsv).
class OddNamesTest {
    static List<String[]> names() throws IOException {
        try (InputStream in = Objects.requireNonNull(OddNamesTest.class.getResourceAsStream("odd-names.tsv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("# "))
                    .map(line -> line.split("\t", -1))
                    .toList();
        }
    }

    @Test
    void holdsFourHundredOrMore() throws IOException {
        assertThat(names()).hasSizeGreaterThanOrEqualTo(400);
    }

    @ParameterizedTest
    @MethodSource("names")
    void readsWhatIsThereAndLeavesOverTheRest(String typed, String outcome, String name, String rest) {
        NameReading reading = NameReader.read(typed);

        assertThat(reading.getClass().getSimpleName().toLowerCase(Locale.ROOT)).isEqualTo(outcome);
        assertThat(reading.known().map(BotanicalName::toString).orElse("")).isEqualTo(name);
        assertThat(reading instanceof NameReading.Partly partly ? partly.rest() : "")
                .isEqualTo(rest);
    }

    @ParameterizedTest
    @MethodSource("names")
    void readsBackWhatItWrites(String typed, String outcome, String name, String rest) {
        NameReader.read(typed)
                .known()
                .ifPresent(known -> assertThat(NameReader.read(known.toString()))
                        .as("%s, %s, %s", typed, outcome, rest)
                        .isInstanceOf(NameReading.Read.class)
                        .extracting(again ->
                                again.known().map(BotanicalName::toString).orElse(""))
                        .isEqualTo(name));
    }
}
