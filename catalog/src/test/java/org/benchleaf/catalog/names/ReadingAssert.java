package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.catalog.names.NameNote.Kind;
import org.benchleaf.shared.name.BotanicalName;

/// States every part of a reading; what is not stated must be absent.
final class ReadingAssert {
    private final NameReading reading;
    private String genus = "";
    private String species = "";
    private String below = "";
    private String group = "";
    private String cultivar = "";
    private String trade = "";
    private String rest = "";
    private final List<String> ofInterest = new ArrayList<>();

    private ReadingAssert(String text) {
        this.reading = NameReader.read(text);
    }

    static ReadingAssert assertName(String text) {
        return new ReadingAssert(text);
    }

    ReadingAssert genus(String expected) {
        genus = expected;
        return this;
    }

    ReadingAssert species(String expected) {
        species = expected;
        return this;
    }

    ReadingAssert below(String expected) {
        below = expected;
        return this;
    }

    ReadingAssert group(String expected) {
        group = expected;
        return this;
    }

    ReadingAssert cultivar(String expected) {
        cultivar = expected;
        return this;
    }

    ReadingAssert trade(String expected) {
        trade = expected;
        return this;
    }

    ReadingAssert rest(String expected) {
        rest = expected;
        return this;
    }

    ReadingAssert noted(Kind kind, String... texts) {
        for (String text : texts) {
            ofInterest.add(kind + " " + text);
        }
        return this;
    }

    void nothingElse() {
        BotanicalName name = reading.known().orElseThrow(() -> new AssertionError(reading));
        assertThat(List.of(
                        name.genusMark().sign() + name.genus(),
                        name.species().map(e -> e.mark().sign() + e.text()).orElse(""),
                        name.infraspecific()
                                .map(b -> b.rank().mark() + " "
                                        + b.epithet().mark().sign()
                                        + b.epithet().text())
                                .orElse(""),
                        name.group().orElse(""),
                        name.cultivar().orElse(""),
                        name.tradeDesignation().orElse(""),
                        reading instanceof NameReading.Partly partly ? partly.rest() : ""))
                .containsExactly(genus, species, below, group, cultivar, trade, rest);
        List<String> telling = reading.notes().stream()
                .filter(note -> note.kind() != Kind.LETTER_X && note.kind() != Kind.OTHER_QUOTES)
                .map(note -> note.kind() + " " + note.text())
                .toList();
        assertThat(telling).containsExactlyElementsOf(ofInterest);
    }
}
