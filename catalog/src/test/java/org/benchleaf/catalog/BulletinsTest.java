package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.walk.Bulletin;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class BulletinsTest {
    private static final YearWeek WEEK = new YearWeek(2026, 41);
    private static final Instant MORNING = Instant.parse("2026-10-07T13:00:00Z");

    private final Engine engine;

    @TempDir
    Path folder;

    private Catalog catalog;

    BulletinsTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void seeTwoPlants() {
        catalog = engine.create(folder, new TestClock("2026-10-07T13:00:00Z"));
        Walk walk = new Walk("walk-0001", "Ann", MORNING);
        for (String key : List.of("sighting-1", "sighting-2")) {
            catalog.walks()
                    .note(new Sighting(
                            key,
                            walk,
                            PlantKey.ofSerial(7),
                            Optional.empty(),
                            Optional.empty(),
                            "",
                            Set.of(Condition.IN_BLOOM),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            "",
                            MORNING))
                    .orThrow();
        }
    }

    @AfterEach
    void closeCatalog() {
        catalog.close();
    }

    private static Bulletin bulletin(int version, Optional<Instant> published, String... sightings) {
        return new Bulletin(
                WEEK,
                version,
                "First frost is near.",
                List.of(sightings).stream()
                        .map(key -> new Bulletin.Line(key, "why " + key))
                        .toList(),
                "Ann",
                published);
    }

    @Test
    void keepsItsLinesInTheOrderChosen() {
        Bulletin saved = catalog.bulletins()
                .save(bulletin(0, Optional.empty(), "sighting-2", "sighting-1"))
                .orThrow();

        assertThat(saved.version()).isEqualTo(1);
        assertThat(catalog.bulletins().find(WEEK)).contains(saved);
        assertThat(saved.lines())
                .containsExactly(
                        new Bulletin.Line("sighting-2", "why sighting-2"),
                        new Bulletin.Line("sighting-1", "why sighting-1"));
    }

    @Test
    void isSeenByEverybodyOnceItIsPublished() {
        catalog.bulletins().save(bulletin(0, Optional.empty(), "sighting-1"));
        assertThat(catalog.bulletins().published(9)).isEmpty();

        catalog.bulletins().save(bulletin(1, Optional.of(MORNING), "sighting-1"));

        assertThat(catalog.bulletins().published(9)).containsExactly(WEEK);
    }

    @Test
    void theSecondOfTwoPeopleWhoChangeItAtOnceIsTold() {
        catalog.bulletins().save(bulletin(0, Optional.empty(), "sighting-1"));
        catalog.bulletins().save(bulletin(1, Optional.empty(), "sighting-1", "sighting-2"));

        var late = catalog.bulletins().save(bulletin(1, Optional.empty(), "sighting-2"));

        assertThat(late.refusal().orElseThrow().key()).isEqualTo("bulletin.stale");
        assertThat(catalog.bulletins().find(WEEK).orElseThrow().lines()).hasSize(2);
    }

    @Test
    void tellsOnlyOfWhatWasSeen() {
        var refused = catalog.bulletins().save(bulletin(0, Optional.empty(), "sighting-9"));

        assertThat(refused.refusal().orElseThrow().key()).isEqualTo("bulletin.sighting.unknown");
        assertThat(catalog.bulletins().find(WEEK)).isEmpty();
    }
}
