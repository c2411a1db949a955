package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Tolerance;
import org.benchleaf.shared.site.WaterNeed;
import org.junit.jupiter.api.Test;

/// Rows of USDA PLANTS (USDA, NRCS, The PLANTS Database, National Plant Data Team, Greensboro NC), oddities included.
class UsdaExcerptTest {
    private static final ImportPlan PLAN = plan(new MemoryBook());

    private static ImportPlan plan(MemoryBook book) {
        try (InputStream content =
                        Objects.requireNonNull(UsdaExcerptTest.class.getResourceAsStream("usda-excerpt.csv"));
                Sheet sheet = SheetReader.open("usda-excerpt.csv", content.readAllBytes())) {
            return ImportPlanner.plan(sheet, ColumnMaps.usdaCharacteristics(), book);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static PlantDraft draft(String name) {
        return PLAN.plants().stream()
                .filter(plant -> plant.name().toString().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Facts facts(String name) {
        return Facts.of(draft(name).facts());
    }

    private static List<String> findings(String name) {
        return PLAN.findings().stream()
                .filter(finding -> finding.place().row() == draft(name).place().row())
                .map(finding -> finding.place().column().orElse("") + " "
                        + finding.problem().key() + " " + finding.outcome())
                .toList();
    }

    @Test
    void accountsForEveryRow() {
        assertThat(PLAN.rows()).isEqualTo(150);
        assertThat(PLAN.plants()).hasSize(150);
        assertThat(PLAN.rowsLeftOut()).isZero();
        assertThat(PLAN.rank()).isEqualTo(ImportPlan.Rank.REFERENCE);
    }

    @Test
    void putsThePublicWordsIntoTheCatalogs() {
        Facts maple = facts("Acer rubrum");
        assertThat(maple.value(Attributes.LIFE_FORM)).contains(Set.of(LifeForm.TREE));
        assertThat(maple.value(Attributes.FOLIAGE)).contains(Foliage.DECIDUOUS);
        assertThat(maple.value(Attributes.HEIGHT)).contains(LengthRange.ofFeet(68, 68));
        assertThat(maple.value(Attributes.GROWTH_RATE)).contains(GrowthRate.FAST);
        assertThat(maple.value(Attributes.EXPOSURE))
                .contains(Set.of(Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE));
        assertThat(maple.value(Attributes.HABIT)).contains(Habit.ROUNDED);
        assertThat(maple.value(Attributes.WATER_NEED)).contains(WaterNeed.HIGH);
        assertThat(maple.value(Attributes.WET_TOLERANCE)).contains(Tolerance.MEDIUM);
        assertThat(maple.value(Attributes.SOIL_PH)).contains(new PhRange(47, 73));
        assertThat(maple.fact(Attributes.HEIGHT).map(fact -> fact.source())).contains(new Source("USDA PLANTS"));
        assertThat(facts("Taxus ×media").value(Attributes.LIFE_FORM))
                .contains(Set.of(LifeForm.TREE, LifeForm.SHRUB, LifeForm.CONIFER));
        assertThat(facts("Panicum virgatum").value(Attributes.LIFE_FORM)).contains(Set.of(LifeForm.GRASS));
        assertThat(facts("Panicum virgatum").value(Attributes.FOLIAGE)).contains(Foliage.HERBACEOUS);
    }

    @Test
    void takesColorsOnlyWhereFlowersAreConspicuous() {
        assertThat(facts("Panicum virgatum").value(Attributes.FLOWER_COLOR)).isEmpty();
        assertThat(facts("Cercis canadensis").fact(Attributes.FLOWER_COLOR).map(fact -> fact.text()))
                .contains("purple #7C5399");
    }

    @Test
    void keepsTheWarmEndOfHardinessOpen() {
        // -43 °F lies in zone 2b, -45 to -40 °F (USDA Plant Hardiness Zone Map 2023)
        assertThat(facts("Juniperus virginiana").value(Attributes.HARDINESS))
                .contains(ZoneRange.andWarmer(HardinessZone.of(2, 'b')));
        // -65 °F is colder than any zone of the map
        assertThat(facts("Picea glauca").value(Attributes.HARDINESS))
                .contains(ZoneRange.andWarmer(HardinessZone.of(1, 'a')));
    }

    @Test
    void takesSeasonsForMonthsAndSaysSoOnce() {
        assertThat(facts("Acer rubrum").value(Attributes.BLOOM))
                .isEqualTo(MonthSet.read("Mar-Apr").toOptional());
        assertThat(PLAN.findings().stream()
                        .filter(finding -> finding.problem().key().equals("column.approximate")))
                .hasSize(1);
    }

    @Test
    void takesToxicityAsACautionForLivestockAndNoneAsNotKnown() {
        assertThat(facts("Taxus ×media").value(Attributes.CAUTIONS))
                .contains(Caution.readList("toxic: livestock - severely toxic").orThrow());
        // The file says None of mountain laurel, whose leaves kill sheep: absence from a list proves nothing
        assertThat(facts("Kalmia latifolia").fact(Attributes.CAUTIONS)).isEmpty();
    }

    @Test
    void leavesOutWhatCannotBeTrue() {
        assertThat(findings("Juniperus virginiana")).containsExactly("leaf_retention foliage.conifer CELL_LEFT_OUT");
        assertThat(facts("Juniperus virginiana").fact(Attributes.FOLIAGE)).isEmpty();
        assertThat(findings("Aronia melanocarpa"))
                .containsExactly("temperature_minimum_f hardiness.native CELL_LEFT_OUT");
        assertThat(findings("Parthenocissus quinquefolia"))
                .containsExactly("height_mature_feet height.vine CELL_LEFT_OUT");
        assertThat(findings("Salix richardsonii")).containsExactly("ph_minimum ph.unknown CELL_LEFT_OUT");
        assertThat(findings("Taxodium distichum")).isEmpty();
        assertThat(facts("Taxodium distichum").value(Attributes.FOLIAGE)).contains(Foliage.DECIDUOUS);
    }

    @Test
    void tellsWhereItContradictsTheShopsOwnFacts() {
        MemoryBook book = new MemoryBook()
                .apply(Planned.plants(
                        new MemoryBook(),
                        "name,foliage,height,source",
                        "Phlox subulata,evergreen,4-6 in,from memory",
                        "Echinacea purpurea,herbaceous,3-4 ft,from memory",
                        "Quercus bicolor,deciduous,50-60 ft,from memory"));
        assertThat(plan(book).findings().stream()
                        .filter(finding -> finding.problem().key().equals("fact.conflict"))
                        .map(finding -> finding.problem().details().get("attribute") + " "
                                + finding.problem().details().get("read") + " v "
                                + finding.problem().details().get("other")))
                .containsExactly("height 37 cm v 91-122 cm", "foliage herbaceous v evergreen");
    }
}
