package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.BenchCard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// What a sale rule asks to print beside a plant stands on its card in every size, whole, before the cautions; these
/// are shortened where there is no room.
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

    @Test
    void cautionsThatSayTheSameOnceTheyAreBriefStandOnce() throws IOException {
        String how = " a long account of what is poisonous about it that no small card has the room to print in full";
        BenchCard card = SampleCards.withWarnings(
                SampleCards.yewCard(),
                List.of(),
                Samples.cautions("toxic: people - seeds," + how + "; toxic: people - leaves," + how
                        + "; toxic: people - bark," + how));
        boolean brief = false;
        for (CardFormat format : CardFormat.values()) {
            try (Printed printed =
                    Printed.of(out -> printer.benchCards(List.of(card), format, PrintStyle.ENGLISH, out))) {
                List<String> poisonous = Structure.of(printed).lines().stream()
                        .filter(line -> line.startsWith("P Poisonous"))
                        .toList();
                assertThat(poisonous).as(format.toString()).isNotEmpty().doesNotHaveDuplicates();
                brief |= poisonous.size() == 1;
            }
        }
        assertThat(brief).as("some card has no room for all of it").isTrue();
    }
}
