package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.BenchCard;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// What a sale rule asks to print beside a plant stands on its card in every size, whole, before the cautions.
class CardNoticeTest {
    private static final String NOTICE = "Harmful to natural habitats where it spreads. Plant it in a container only.";

    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void aNoticeStandsOnTheCardBeforeItsCautions(CardFormat format) throws IOException {
        BenchCard card = SampleCards.withNotices(SampleCards.yewCard(), List.of(NOTICE));
        try (Printed printed = Printed.of(out -> printer.benchCards(List.of(card), format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(1);
            List<String> read = Structure.of(printed).lines();
            assertThat(read).contains("P " + NOTICE);
            assertThat(read.subList(read.indexOf("P " + NOTICE), read.size()))
                    .anyMatch(line -> line.startsWith("P Poisonous"));
        }
    }
}
