package org.benchleaf.catalog.prints;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.Engine;
import org.benchleaf.shared.code.PlantKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class PrintLedgerTest {
    private static final Instant MONDAY = Instant.parse("2026-11-23T08:00:00Z");
    private static final PlantKey ITEA = PlantKey.ofSerial(7);

    @TempDir
    Path folder;

    private final Engine engine;
    private Catalog catalog;

    PrintLedgerTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void open() {
        catalog = engine.create(folder, at(Duration.ZERO));
    }

    @AfterEach
    void close() {
        catalog.close();
    }

    private static PrintEntry card(String price, String digest, String host) {
        return new PrintEntry(
                "card",
                "large",
                ITEA,
                Optional.of(2),
                "",
                "Itea virginica 'Henry's Garnet'",
                Optional.of(price),
                "https://" + host + "/p/" + ITEA + "-2",
                digest,
                3);
    }

    private static Clock at(Duration later) {
        return Clock.fixed(MONDAY.plus(later), ZoneOffset.UTC);
    }

    private void openAgainAfter(Duration later) {
        catalog.close();
        catalog = Catalog.open(engine.location(folder), at(later));
    }

    @Test
    void tellsTheNewestPrintOfAThingAndForgetsNone() {
        catalog.prints().add(List.of(card("21.50 USD", "a", "old.example")));
        openAgainAfter(Duration.ofDays(2));
        PrintEntry dearer = card("22.50 USD", "b", "old.example");
        catalog.prints().add(List.of(dearer));

        assertThat(catalog.prints().newest("card", Instant.EPOCH))
                .extracting(PrintedEntry::entry)
                .containsExactly(dearer);
        assertThat(catalog.prints().newest("card", MONDAY.plus(Duration.ofDays(3))))
                .isEmpty();
        assertThat(catalog.prints().newest("label", Instant.EPOCH)).isEmpty();
        assertThat(catalog.prints().last(10))
                .extracting(printed -> printed.entry().price().orElseThrow())
                .containsExactly("22.50 USD", "21.50 USD");
        assertThat(catalog.prints().last(1).getFirst().at()).isEqualTo(MONDAY.plus(Duration.ofDays(2)));
    }

    @Test
    void knowsWhoPrintedWhenSomebodySaidSo() {
        catalog.prints().add(List.of(card("21.50 USD", "a", "old.example")));
        catalog.prints().by("Pip").add(List.of(card("22.50 USD", "b", "old.example")));
        assertThat(catalog.prints().last(2)).extracting(PrintedEntry::who).containsExactly("Pip", "");
    }

    @Test
    void keepsCardsAndLabelsOfAllFormatsApart() {
        PrintEntry card = card("21.50 USD", "a", "old.example");
        PrintEntry ofThePlant = new PrintEntry(
                "card", "small", ITEA, Optional.empty(), "", card.name(), Optional.empty(), card.address(), "c", 1);
        catalog.prints().add(List.of(card, ofThePlant));
        assertThat(catalog.prints().newest("card", Instant.EPOCH))
                .extracting(PrintedEntry::entry)
                .containsExactly(card, ofThePlant);
    }

    @Test
    void countsThePaperThatDependsOnEachServer() {
        catalog.prints().add(List.of(card("1 USD", "a", "old.example"), card("2 USD", "b", "old.example")));
        openAgainAfter(Duration.ofDays(1));
        catalog.prints().add(List.of(card("2 USD", "b", "new.example:8443")));
        assertThat(catalog.prints().bases())
                .containsExactly(
                        new PrintedBase("https://new.example:8443", 3, MONDAY.plus(Duration.ofDays(1))),
                        new PrintedBase("https://old.example", 6, MONDAY));
    }
}
