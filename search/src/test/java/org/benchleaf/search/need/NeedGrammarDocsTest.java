package org.benchleaf.search.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.api.Test;

class NeedGrammarDocsTest {
    @Test
    void everyKindOfWishHasItsLine() throws IOException {
        List<String> rows = Files.readAllLines(Path.of("..", "docs", "need-queries.md")).stream()
                .filter(line -> line.startsWith("| `"))
                .toList();
        List<String> kinds = Arrays.stream(Wish.class.getPermittedSubclasses())
                .map(Class::getSimpleName)
                .toList();
        assertThat(kinds).hasSizeGreaterThan(20);
        for (String kind : kinds) {
            assertThat(rows)
                    .as(kind)
                    .filteredOn(row -> row.contains("| `" + kind + "`"))
                    .hasSize(1);
        }
    }

    @Test
    void everyPhraseOfTheVocabularyIsReadAsItself() {
        Vocabulary english = EnglishWords.read();
        NeedReader reader = new NeedReader(english);
        for (String phrase : english.table("wishes").keySet()) {
            NeedReading reading = reader.read(phrase, java.time.LocalDate.of(2026, 11, 25));
            assertThat(reading.notUnderstood()).as(phrase).isEmpty();
            assertThat(reading.need().wishes()).as(phrase).isNotEmpty();
            List<Wish> meant = WishWords.read(english.meaning("wishes", phrase).orElseThrow())
                    .wishes();
            assertThat(reading.need().wishes().stream().map(wish -> wish.wish()))
                    .as(phrase)
                    .isEqualTo(meant);
        }
    }
}
