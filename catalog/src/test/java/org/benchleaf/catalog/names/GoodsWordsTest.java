package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GoodsWordsTest {
    /// A text that counts how often one of its letters is looked at.
    private static final class Counted implements CharSequence {
        private final String text;
        private long looks;

        Counted(String text) {
            this.text = text;
        }

        @Override
        public int length() {
            return text.length();
        }

        @Override
        public char charAt(int index) {
            looks++;
            return text.charAt(index);
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            return text.subSequence(start, end);
        }

        @Override
        public String toString() {
            return text;
        }
    }

    private static long looks(String piece, int letters) {
        Counted text = new Counted(piece.repeat(letters / piece.length()));
        assertThat(GoodsWords.ending(text)).isEmpty();
        return text.looks;
    }

    @ParameterizedTest
    @ValueSource(strings = {",", " ", ", ", "( ", "(", ";", ".", "9", "1 ", "1,", "#", "# ", "a, ", "' ", "$ ", "B & "})
    void looksAtEachLetterSoManyTimesHoweverLongTheTextIs(String piece) {
        assertThat(looks(piece, 4000)).isBetween(1L, 11 * looks(piece, 400));
    }
}
