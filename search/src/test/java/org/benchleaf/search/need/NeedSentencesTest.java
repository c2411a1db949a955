package org.benchleaf.search.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/// Sentences as customers say them and as extension services put needs, each with what it must be read as.
/// Lines above
/// `# after extension lists` are common practice, no source; those below are phrased after the lists of which
/// the number
/// stands before them (see SOURCES.md).
class NeedSentencesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final NeedReader reader = new NeedReader(EnglishWords.read()
            .withGenera(Set.of("Leucothoe", "Amelanchier", "Acer"))
            .withSpecies(Map.of(
                    "acer platanoides", "Acer platanoides",
                    "norway maple", "Acer platanoides",
                    "hydrangea paniculata", "Hydrangea paniculata",
                    "sugar maple", "Acer saccharum",
                    "black walnut", "Juglans nigra")));

    private final NeedReader spanish = new NeedReader(EnglishWords.read("es").withGenera(Set.of("Acer", "Hydrangea")));

    @Test
    void readsEverySentenceAsMeant() throws IOException {
        assertRead(reader, rows("sentences.txt"));
    }

    @Test
    void readsSpanishSentencesAsMeant() throws IOException {
        List<String> rows = rows("sentences_es.txt");
        assertThat(rows).hasSizeGreaterThanOrEqualTo(60).doesNotHaveDuplicates();
        assertRead(spanish, rows);
    }

    @Test
    void everySpanishPhraseIsReadAsItself() {
        Vocabulary words = EnglishWords.read("es");
        SoftAssertions softly = new SoftAssertions();
        for (String phrase : words.table("wishes").keySet()) {
            NeedReading reading = spanish.read(phrase, TODAY);
            softly.assertThat(reading.notUnderstood()).as(phrase).isEmpty();
            softly.assertThat(reading.need().wishes().stream().map(wish -> wish.wish()))
                    .as(phrase)
                    .isEqualTo(WishWords.read(words.meaning("wishes", phrase).orElseThrow())
                            .wishes());
        }
        softly.assertAll();
    }

    private static void assertRead(NeedReader reader, List<String> rows) {
        SoftAssertions softly = new SoftAssertions();
        for (String row : rows) {
            String[] halves = row.split("=>", 2);
            String said = halves[0].replaceFirst("^N\\d\\d:", "").strip();
            String read = WishText.of(reader.read(said, TODAY));
            if (Boolean.getBoolean("print")) {
                System.out.println(halves[0].strip() + " => " + read);
            }
            softly.assertThat(read).as(said).isEqualTo(halves.length < 2 ? "" : halves[1].strip());
        }
        softly.assertAll();
    }

    @Test
    void thereAreTwoHundredAndFiftySentencesSixtyOfThemAfterExtensionLists() throws IOException {
        List<String> rows = rows("sentences.txt");
        assertThat(rows).hasSizeGreaterThanOrEqualTo(250).doesNotHaveDuplicates();
        assertThat(rows.stream().filter(row -> row.matches("N\\d\\d:.*"))).hasSizeGreaterThanOrEqualTo(60);
    }

    private static List<String> rows(String name) throws IOException {
        try (InputStream file = Objects.requireNonNull(NeedSentencesTest.class.getResourceAsStream(name))) {
            return new ArrayList<>(new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList());
        }
    }
}
