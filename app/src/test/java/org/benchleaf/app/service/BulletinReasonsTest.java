package org.benchleaf.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Relative;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Kinship;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Facts are from memory; what sells a plant in autumn is common practice, no source.
class BulletinReasonsTest {
    private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 7);
    private static final Source MEMORY = new Source("from memory");
    private static final BotanicalName SWEETSPIRE = BotanicalName.ofSpecies("Itea", "virginica");

    private final BulletinReasons reasons =
            new BulletinReasons(Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL));

    private static <T> Fact<?> fact(Attribute<T> attribute, String text) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), MEMORY, false);
    }

    private static PlantRecord plant(Fact<?>... facts) {
        return new PlantRecord(
                PlantKey.ofSerial(7),
                SWEETSPIRE,
                Optional.empty(),
                List.of(),
                List.of(),
                Facts.of(Arrays.asList(facts)),
                List.of(),
                false);
    }

    private static Sighting seen(Optional<Integer> heightCm, Condition... conditions) {
        return new Sighting(
                "sighting-1",
                new Walk("walk-0001", "Ann", Instant.EPOCH),
                PlantKey.ofSerial(7),
                Optional.empty(),
                Optional.empty(),
                "",
                Set.of(conditions),
                heightCm,
                Optional.empty(),
                Optional.empty(),
                "best row",
                Instant.EPOCH);
    }

    private String propose(PlantRecord plant, Condition... conditions) {
        return reasons.propose(seen(Optional.empty(), conditions), plant, Optional.empty(), List.of(), OCTOBER);
    }

    @Test
    void fallColorIsToldWithItsColorAndWhatComesNext() {
        PlantRecord plant = plant(
                fact(Attributes.FALL_COLOR, "red #B8272F"),
                fact(Attributes.FALL_MONTHS, "Oct-Nov"),
                fact(Attributes.BLOOM, "Jun"));

        assertThat(propose(plant, Condition.FULL_FALL_COLOR, Condition.FULL))
                .isEqualTo("In full fall color now, red; next it flowers, Jun");
    }

    @Test
    void budsThatAreSetTellWhenTheyOpenAndTheFlowersAreNotToldTwice() {
        PlantRecord plant = plant(fact(Attributes.BLOOM, "Mar-Apr"), fact(Attributes.FOLIAGE, "evergreen"));

        assertThat(propose(plant, Condition.FLOWER_BUDS_SET))
                .isEqualTo("Next year's flower buds are set, to open in Mar–Apr; keeps its leaves all winter");
    }

    @Test
    void aPlantTallerThanItsSizeIsWorthSaying() {
        // 6 ft = 182.88 cm: NIST SP 811 (2008), app. B.8
        Optional<StockSize> size = StockSize.read("5-6 ft B&B").toOptional();

        assertThat(reasons.propose(seen(Optional.of(183)), plant(), size, List.of(), OCTOBER))
                .startsWith("Stands 6 ft, above the 5–6 ft B&B");
        assertThat(reasons.propose(seen(Optional.of(170)), plant(), size, List.of(), OCTOBER))
                .doesNotContain("above");
    }

    @Test
    void inAPotItIsToldHowMuchOfItsHeightItHas() {
        PlantRecord plant = plant(fact(Attributes.HEIGHT, "3-5 ft"));

        assertThat(reasons.propose(
                        seen(Optional.of(76)), plant, StockSize.read("#3").toOptional(), List.of(), OCTOBER))
                .contains("already, of 3–5 ft when grown");
        assertThat(reasons.propose(
                        seen(Optional.of(200)), plant, StockSize.read("#3").toOptional(), List.of(), OCTOBER))
                .as("taller than any source says")
                .doesNotContain("when grown");
    }

    @ParameterizedTest
    @EnumSource(
            value = Kinship.class,
            names = {"SMALLER_SISTER_OF", "LARGER_SISTER_OF", "IMPROVED_OVER"})
    void aSisterIsCompared(Kinship kinship) {
        Relative sister = new Relative(kinship, SWEETSPIRE.withCultivar("Henry's Garnet"), Optional.empty());

        assertThat(reasons.propose(seen(Optional.empty()), plant(), Optional.empty(), List.of(sister), OCTOBER))
                .endsWith("Itea virginica 'Henry's Garnet'");
    }

    @Test
    void nothingKnownIsNoReason() {
        assertThat(propose(plant())).isEmpty();
    }

    @Test
    void everyLookThatSellsHasItsWords() {
        Set<Condition> noReason =
                Set.of(Condition.FOLIAGE_FINISHED, Condition.TIED_UP, Condition.STAGED, Condition.NEXT_CROP_IN_SPRING);
        Set<Condition> silent = Arrays.stream(Condition.values())
                .filter(condition -> propose(plant(), condition).isEmpty())
                .collect(Collectors.toSet());

        assertThat(silent).isEqualTo(noReason);
    }

    @Test
    void noMoreThanThreeThingsAreTold() {
        PlantRecord plant = plant(
                fact(Attributes.HEIGHT, "3-5 ft"),
                fact(Attributes.FALL_COLOR, "red #B8272F"),
                fact(Attributes.BLOOM, "Jun"));
        Relative sister =
                new Relative(Kinship.SMALLER_SISTER_OF, SWEETSPIRE.withCultivar("Henry's Garnet"), Optional.empty());

        assertThat(reasons.propose(
                                seen(Optional.of(60), Condition.FULL_FALL_COLOR),
                                plant,
                                Optional.empty(),
                                List.of(sister),
                                OCTOBER)
                        .split("; "))
                .hasSize(3);
    }
}
