package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;

class NameReaderPropertyTest {
    @Property
    void readsBackWhatANameWrites(@ForAll("names") BotanicalName name) {
        assertThat(NameReader.read(name.toString())).isInstanceOf(NameReading.Read.class);
        assertThat(NameReader.read(name.toString()).known()).contains(name);
    }

    @Property
    void neverThrows(@ForAll String text) {
        assertThat(NameReader.read(text)).isNotNull();
    }

    @Property
    void neverThrowsOnPiecesOfNames(@ForAll("scraps") String text) {
        assertThat(NameReader.read(text)).isNotNull();
    }

    @Property(tries = 100)
    void comesToAnEndWithTheLongestTextsAndDoesNotBeginWithLongerOnes(@ForAll("scraps") String text) {
        Assume.that(!text.isEmpty());
        String longText = text.repeat(400 / text.length() + 1);
        assertThat(NameReader.read(longText.substring(0, 400))).isNotNull();
        assertThat(NameReader.read(longText + text))
                .isInstanceOfSatisfying(
                        NameReading.Unread.class,
                        unread -> assertThat(unread.problem().key()).isEqualTo("name.long"));
    }

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.of(
                        "Acer",
                        "rubrum",
                        "×",
                        "x",
                        "X",
                        "+",
                        "'",
                        "\"",
                        "‘",
                        "’",
                        "(",
                        ")",
                        "[",
                        "]",
                        "®",
                        "TM",
                        "PP",
                        "PP12",
                        "PBR",
                        "cv.",
                        "subsp.",
                        "var.",
                        "f.",
                        "nothovar.",
                        "Group",
                        "gx",
                        "L.",
                        "&",
                        "ex",
                        "Marshall",
                        "OCTOBER",
                        "Glory",
                        "spp.",
                        "H.",
                        ".",
                        ",",
                        " ",
                        " ",
                        " ",
                        "-",
                        "''",
                        "é",
                        "12",
                        "ß",
                        "\u0000",
                        "\ud83c\udf31",
                        "\ud83c")
                .list()
                .ofMaxSize(14)
                .map(pieces -> String.join("", pieces));
    }

    @Provide
    Arbitrary<BotanicalName> names() {
        Arbitrary<String> latin = Arbitraries.strings()
                .withChars("abcdefghijklmnoprstuv")
                .ofMinLength(4)
                .ofMaxLength(14)
                .filter(word -> !word.startsWith("cf") && !word.equals("form") && !word.equals("forma"));
        Arbitrary<String> genus = latin.map(NameReaderPropertyTest::capitalised);
        Arbitrary<Epithet> epithet = Combinators.combine(
                        Arbitraries.of(HybridMark.NONE, HybridMark.HYBRID),
                        Combinators.combine(latin, latin.optional(0.2))
                                .as((word, more) ->
                                        word + more.map(m -> "-" + m).orElse("")))
                .as(Epithet::new);
        Arbitrary<Optional<Infraspecific>> below = Combinators.combine(Arbitraries.of(Rank.class), epithet)
                .as(Infraspecific::new)
                .optional(0.4);
        Arbitrary<String> words = latin.map(NameReaderPropertyTest::capitalised)
                .list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(list -> list.stream().collect(Collectors.joining(" ")));
        Arbitrary<String> cultivar = Combinators.combine(
                        words, Arbitraries.of("", "'s Choice", " of the Night", " O'Grady", " 2"))
                .as((text, more) -> text + more);
        return Combinators.combine(
                        Arbitraries.of(HybridMark.class),
                        genus,
                        epithet.optional(0.8),
                        below,
                        words.optional(0.2),
                        cultivar.optional(0.5),
                        words.optional(0.2))
                .as((mark, name, species, rank, group, epithetOfCultivar, trade) -> new BotanicalName(
                        mark, name, species, species.flatMap(s -> rank), group, epithetOfCultivar, trade));
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
