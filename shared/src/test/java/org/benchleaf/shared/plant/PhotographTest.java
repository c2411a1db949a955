package org.benchleaf.shared.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotographTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "oak.jpg",
                "Acer rubrum 'October Glory'.jpg",
                "oak.jpg by A. Grower",
                "oak.jpg by A. Grower (CC BY 4.0)",
                "oak.jpg (CC0 1.0)",
                "oak.jpg; fall.PNG by A. Grower"
            })
    void whatIsWrittenReadsBackTheSame(String text) {
        List<Photograph> photographs = Photograph.readList(text).toOptional().orElseThrow();
        assertThat(Photograph.readList(Photograph.write(photographs)).toOptional())
                .contains(photographs);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "oak",
                "oak.gif",
                "../settings.properties",
                "../oak.jpg",
                "a/oak.jpg",
                "a\\oak.jpg",
                "/etc/oak.jpg",
                ".oak.jpg",
                "http://example.org/oak.jpg",
                "oak.jpg from A. Grower"
            })
    void whatIsNoBareFileNameOfAPictureIsRefused(String text) {
        assertThat(Photograph.readList(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("photograph.form"));
    }
}
