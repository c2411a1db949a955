package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.OptionalInt;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.shared.code.LiveLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardCodeTest {
    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void theCodeOnEveryCardLeadsToItsLiveLink(CardFormat format) throws Exception {
        Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);
        try (Printed printed =
                Printed.of(out -> printer.benchCards(SampleCards.cards(), format, PrintStyle.ENGLISH, out))) {
            for (int page = 0; page < printed.pages(); page++) {
                BufferedImage card = printed.image(page, 300);
                double from = format.widthMm() * 0.6;
                double top = format.heightMm() * (format.isWide() ? 0.5 : 0.7);
                assertThat(Printed.decode(card, 300, from, top, format.widthMm() - from, format.heightMm() - top))
                        .isEqualTo(SampleCards.cards().get(page).link().forCode());
            }
        }
    }

    @Test
    void modulesAreWholeDotsAndNeverUnderFourTenthsOfAMillimetre() {
        CodeImage code = CodeImage.of(LiveLink.of(Samples.BASE, Samples.key(1)));
        // version 2 or 3 with its quiet zone: 25 or 29 modules and 8 (ISO/IEC 18004)
        assertThat(code.sideInModules()).isIn(33, 37);
        // five dots of 1/300 in are 0.423 mm
        double least = code.sideInModules() * 5 * 25.4 / 300;
        assertThat(code.dotsThatFit(least)).isEqualTo(OptionalInt.of(5));
        assertThat(code.dotsThatFit(least - 0.01)).isEmpty();
    }
}
