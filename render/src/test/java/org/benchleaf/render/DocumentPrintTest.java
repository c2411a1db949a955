package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.pdfbox.text.TextPosition;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.shared.measure.LengthStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DocumentPrintTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void anAvailabilityListHoldsEveryPlantOnceUnderHeadsThatComeAgain(SheetFormat format) throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.availability(DocumentSamples.availability(60), format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isGreaterThan(3);
            StringBuilder all = new StringBuilder();
            for (int page = 0; page < printed.pages(); page++) {
                String text = printed.text(page);
                all.append(text);
                assertThat(text)
                        .contains("Plant", "Size", "Now", "Ready", "Each", "in bloom")
                        .contains("page " + (page + 1) + " of " + printed.pages());
                assertThat(printed.widthMm(page)).isCloseTo(format.widthMm(), within(0.05));
                assertThat(printed.heightMm(page)).isCloseTo(format.heightMm(), within(0.05));
            }
            assertThat(count(all, "Liriodendron tulipifera")).isEqualTo(12);
            assertThat(all).contains("Shrubs", "Shrubs, continued", "Other plants", "60 from 5 Apr 2027", "sold out");
        }
    }

    @Test
    void anEmptyAvailabilityListSaysSo() throws IOException {
        try (Printed printed = Printed.of(out -> printer.availability(
                new org.benchleaf.render.page.AvailabilityList(DocumentSamples.NOW, java.util.List.of(), Samples.SHOP),
                SheetFormat.LETTER,
                PrintStyle.ENGLISH,
                out))) {
            assertThat(printed.pages()).isEqualTo(1);
            assertThat(printed.text(0)).contains("Availability", "Nothing to list at present.");
        }
    }

    @Test
    void aBulletinLeadsWithOnePlantAndSaysWhy() throws Exception {
        try (Printed printed = Printed.of(
                out -> printer.bulletin(DocumentSamples.bulletin(), SheetFormat.LETTER, PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0))
                    .contains("Best this week", "23 November 2026 to 29 November 2026", "The pick of the week")
                    .contains("Dark, dense and upright the whole winter through.")
                    .contains("Also at their best", "120 now");
            // whole, wherever its lines break
            assertThat(Structure.of(printed).lines())
                    .anyMatch(line -> line.endsWith("Poisonous to people, dogs, cats, horses and livestock: leaves and"
                            + " seeds deadly if eaten"));
            assertThat(printed.text(printed.pages() - 1)).contains("What is here");
            assertThat(Printed.decode(printed.image(0, 200), 200, 150, 50, 66, 100))
                    .isEqualTo(SampleSheets.yewSheet().link().forCode());
        }
    }

    @Test
    void aBulletinWithoutPlantsSaysSo() throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.bulletin(DocumentSamples.emptyBulletin(), SheetFormat.A4, PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0)).contains("No plant was chosen for this week.");
        }
    }

    @ParameterizedTest
    @CsvSource({"2", "3", "4"})
    void aComparisonTellsFirstWhatDiffers(int plants) throws IOException {
        Comparison comparison = new Comparison(SampleSheets.sheets().subList(0, plants), Samples.SHOP);
        try (Printed printed =
                Printed.of(out -> printer.comparison(comparison, SheetFormat.LETTER, PrintStyle.ENGLISH, out))) {
            StringBuilder all = new StringBuilder();
            for (int page = 0; page < printed.pages(); page++) {
                all.append(printed.text(page));
            }
            assertThat(all.indexOf("What differs")).isLessThan(all.indexOf("What they have in common"));
            assertThat(all).contains("Take care", "none recorded", "What is here");
            if (plants > 2) {
                assertThat(all).contains("not known");
            }
        }
    }

    @Test
    void aPackHasItsCoverItsListItsYearAndASheetAPlant() throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.listPack(DocumentSamples.pack(), SheetFormat.LETTER, PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0))
                    .contains("Library courtyard, Ashlock", "375 plants in 5 lines", "part shade", "US-PA")
                    .contains("week of 12 April 2027", "$50,150.00");
            assertThat(printed.text(1))
                    .contains("The list", "no longer in the catalog", "12 short", "$12,537.50", "Without a price: 1")
                    .contains("along the north wall", "200 sq ft at 18 in, triangular");
            assertThat(printed.text(2) + printed.text(1)).contains("Twelve months", "Nothing on the list shows in");
            assertThat(printed.text(printed.pages() - 1)).contains("Taxus ×media");
        }
    }

    @ParameterizedTest
    @CsvSource({"es, IMPERIAL", "es, BOTH", "fr, METRIC", "fr, BOTH"})
    void everyDocumentPrintsInEveryLanguageWithoutAWordOfEnglishOfOurs(String language, LengthStyle units)
            throws IOException {
        PrintStyle style = new PrintStyle(Locale.forLanguageTag(language), units);
        Pattern english = Pattern.compile(
                "(?i)\\b(what is here|take care|page \\d+ of|not known|full sun|this week|each|sold out)\\b");
        try (Printed bulletin =
                        Printed.of(out -> printer.bulletin(DocumentSamples.bulletin(), SheetFormat.A4, style, out));
                Printed list = Printed.of(
                        out -> printer.availability(DocumentSamples.availability(9), SheetFormat.A4, style, out));
                Printed comparison = Printed.of(out -> printer.comparison(
                        new Comparison(SampleSheets.sheets().subList(0, 4), Samples.SHOP),
                        SheetFormat.A4,
                        style,
                        out));
                Printed sheets =
                        Printed.of(out -> printer.plantSheets(SampleSheets.sheets(), SheetFormat.A4, style, out));
                Printed cards =
                        Printed.of(out -> printer.benchCards(SampleCards.cards(), CardFormat.LARGE, style, out))) {
            for (Printed document : java.util.List.of(bulletin, list, comparison, cards, sheets)) {
                for (int page = 0; page < document.pages(); page++) {
                    assertThat(english.matcher(document.text(page)).results().map(found -> found.group()))
                            .isEmpty();
                }
            }
            assertThat(sheets.text(0)).contains("Itea virginica");
        }
    }

    @Test
    void nothingReachesBeyondThePage() throws IOException {
        try (Printed printed = Printed.of(out ->
                printer.availability(DocumentSamples.availability(20), SheetFormat.A4, PrintStyle.ENGLISH, out))) {
            for (int page = 0; page < printed.pages(); page++) {
                for (TextPosition glyph : printed.glyphs(page)) {
                    assertThat(glyph.getX() + glyph.getWidth())
                            .as(glyph.getUnicode())
                            .isLessThanOrEqualTo((float) ((210 - 13.9) / 25.4 * 72));
                    assertThat(glyph.getX()).isGreaterThanOrEqualTo((float) (13.9 / 25.4 * 72));
                }
            }
        }
    }

    private static int count(CharSequence text, String part) {
        return (int)
                Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
    }
}
