package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.Shop;
import org.junit.jupiter.api.Test;

class WebPagesTest {
    private final WebPages pages = WebPages.using(ContentPack.builtIn(), Photographs.NONE);

    @Test
    void everyPageIsLightAndWithoutScript() {
        for (PlantSheet sheet : SampleSheets.sheets()) {
            String page = pages.plantPage(sheet, PrintStyle.ENGLISH);
            assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(120_000);
            assertThat(page)
                    .startsWith("<!DOCTYPE html>")
                    .doesNotContain("<script")
                    .doesNotContain("http://");
        }
    }

    @Test
    void aPageSaysWhatIsHereAndWhatToTakeCareOf() {
        String page = pages.plantPage(SampleSheets.yewSheet(), PrintStyle.ENGLISH);
        assertThat(page)
                .contains("<html lang=\"en\">", "120 now", "60 from the week of 5 April 2027")
                .contains("Poisonous to people, dogs, cats, horses and livestock: leaves and seeds deadly if eaten")
                .contains("The year of Taxus ×media", "The size of Taxus ×media")
                .contains("ASPCA Animal Poison Control list, 2024 copy");
    }

    @Test
    void aPageOfAPlantOfWhichNothingIsKnownStaysWhole() {
        assertThat(pages.plantPage(SampleSheets.bareSheet(), PrintStyle.ENGLISH))
                .contains("No facts recorded yet.", "No caution is recorded for this plant.")
                .doesNotContain("<svg");
    }

    @Test
    void sameInputGivesTheSamePage() {
        assertThat(pages.plantPage(SampleSheets.iteaSheet(), PrintStyle.ENGLISH))
                .isEqualTo(WebPages.using(ContentPack.builtIn(), Photographs.NONE)
                        .plantPage(SampleSheets.iteaSheet(), PrintStyle.ENGLISH));
    }

    @Test
    void markupInTheCatalogIsShownLiterally() {
        PlantSheet sheet = SampleSheets.bareSheet();
        PlantSheet hostile = new PlantSheet(
                sheet.title(),
                java.util.Optional.of("<script>alert(1)</script>"),
                java.util.Optional.empty(),
                List.of(),
                sheet.year(),
                sheet.size(),
                List.of(),
                List.of(),
                List.of(),
                java.util.Optional.empty(),
                sheet.link(),
                new Shop("\"><img src=x>", ""),
                Optional.empty());
        assertThat(pages.plantPage(hostile, PrintStyle.ENGLISH))
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script", "<img");
    }
}
