package org.benchleaf.content;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.shared.color.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaletteTest {
    private static final Srgb PAPER = new Srgb(255, 255, 255);
    private final ContentPack content = ContentPack.builtIn();

    @Test
    void aShopChoosesAmongFour() {
        assertThat(content.palettes()).extracting(Palette::name).containsExactly("slate", "fern", "loam", "dusk");
    }

    @Test
    void everyWordOfEveryPaletteCanBeReadOnPaper() {
        // WCAG 2.x, success criterion 1.4.3: 4.5 for text
        for (Palette palette : content.palettes()) {
            for (String word : Palette.WORDS) {
                assertThat(requireNonNull(palette.inks().get(word)).contrastWith(PAPER))
                        .as(palette.name() + " " + word)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    // ratios computed by the formula of WCAG 2.1 (relative luminance), as published with the recommendation
    @ParameterizedTest
    @CsvSource({"#000000, 21.00", "#767676, 4.54", "#777777, 4.48", "#595959, 7.00", "#949494, 3.03", "#2E7D32, 5.13"})
    void contrastIsMeasuredAsWcagDoes(String ink, double ratio) {
        assertThat(Srgb.read(ink).orThrow().contrastWith(PAPER)).isCloseTo(ratio, within(0.006));
    }

    @Test
    void stylesOfPaperAreTintedAndNoNameOfAnInkIsLeft() {
        for (Palette palette : content.palettes()) {
            ContentPack tinted = content.withPalette(palette);
            for (String style : List.of("type", "sheet", "document", "report", "bulletin")) {
                assertThat(tinted.text("styles/" + style + ".css")).doesNotContainPattern("%[a-z]+%");
            }
            assertThat(tinted.text("styles/type.css"))
                    .contains(requireNonNull(palette.inks().get("ink")).toString());
        }
        assertThat(content.text("styles/type.css")).contains("#262A26");
    }

    @Test
    void aShopMayAddItsOwn(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("palettes.csv"),
                "name,ink,soft,quiet,line,hair,accent\nbarn,#2A1A1A,#4A3A3A,#605050,#908080,#D8CCCC,#8B1E2D\n");
        ContentPack own = ContentPack.withShopFolder(folder);
        assertThat(own.palette("barn").inks()).containsEntry("accent", new Srgb(0x8B, 0x1E, 0x2D));
        assertThatThrownBy(() -> own.palette("slate"))
                .isInstanceOf(MissingContent.class)
                .hasMessage("palette slate is missing from palettes.csv");
        Files.writeString(folder.resolve("palettes.csv"), "name,ink\nbarn,#2A1A1A\n");
        assertThatThrownBy(own::palettes).hasMessage("ink soft of palette barn is missing from palettes.csv");
    }
}
