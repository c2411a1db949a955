package org.benchleaf.search.pairing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.plant;
import static org.benchleaf.search.Plants.stock;

import java.nio.file.Path;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Season;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PairingTest {
    private static final BotanicalName WINTERBERRY = BotanicalName.ofSpecies("Ilex", "verticillata");

    @TempDir
    Path folder;

    private final InMemoryCatalogView catalog = new InMemoryCatalogView();
    private PlantIndex index;

    // which male serves which female: common practice of the trade, no source
    @BeforeEach
    void winterberriesAndOthers() {
        put(
                1,
                WINTERBERRY.withCultivar("Winter Red"),
                berry("female", "late", "pollination_partners", "Ilex verticillata 'Southern Gentleman'"));
        put(2, WINTERBERRY.withCultivar("Southern Gentleman"), berry("male", "late"));
        put(3, WINTERBERRY.withCultivar("Jim Dandy"), berry("male", "early"));
        put(4, WINTERBERRY.withCultivar("Red Sprite"), berry("female", "early"));
        put(
                5,
                BotanicalName.ofSpecies("Ilex", "opaca").withCultivar("Any"),
                facts("sex", "male", "pollination_group", "Ilex opaca"));
        put(
                6,
                BotanicalName.ofSpecies("Packera", "aurea"),
                facts("bloom", "Apr-May", "exposure", "part shade", "height", "30-60 cm"));
        put(
                7,
                BotanicalName.ofSpecies("Malus", "domestica").withCultivar("One"),
                facts("self_fertile", "no", "bloom", "Apr-May"));
        put(
                8,
                BotanicalName.ofSpecies("Malus", "domestica").withCultivar("Two"),
                facts("self_fertile", "no", "bloom", "May"));
        put(
                9,
                BotanicalName.ofSpecies("Malus", "domestica").withCultivar("Late"),
                facts("self_fertile", "no", "bloom", "Jun"));
        for (int serial = 1; serial <= 9; serial++) {
            catalog.put(stock(serial, "#3, 50"));
        }
        index = PlantIndex.open(folder, catalog);
    }

    @AfterEach
    void close() {
        index.close();
    }

    private void put(long serial, BotanicalName name, Facts facts) {
        catalog.put(plant(serial, name, facts));
    }

    private static Facts berry(String sex, String group, String... more) {
        String[] all = new String[8 + more.length];
        String[] first = {
            "sex", sex, "pollination_group", "Ilex verticillata " + group, "bloom", "Jun-Jul", "exposure", "part shade"
        };
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return facts(all);
    }

    private PlantRecord plantOf(long serial) {
        return catalog.plant(PlantKey.ofSerial(serial)).orElseThrow();
    }

    private List<String> partners(long serial) {
        return new PartnerFinder(catalog, index)
                .of(plantOf(serial)).stream()
                        .map(partner -> partner.plant().name().toString() + " " + partner.how())
                        .toList();
    }

    @Test
    void aFemaleNeedsAMaleOfItsGroup() {
        assertThat(Pollination.of(plantOf(1).facts())).isEqualTo(Pollination.NEEDS_MALE);
        assertThat(partners(1)).containsExactly("Ilex verticillata 'Southern Gentleman' NAMED");
        assertThat(partners(4)).containsExactly("Ilex verticillata 'Jim Dandy' SAME_GROUP");
    }

    @Test
    void aMaleServesTheFemalesOfItsGroup() {
        assertThat(Pollination.of(plantOf(2).facts())).isEqualTo(Pollination.IS_MALE);
        assertThat(partners(2)).containsExactly("Ilex verticillata 'Winter Red' NAMED");
    }

    @Test
    void whatDoesNotTakeItsOwnPollenNeedsAnotherOneInBloomAtTheSameTime() {
        assertThat(Pollination.of(plantOf(7).facts())).isEqualTo(Pollination.NEEDS_OTHER);
        assertThat(partners(7)).containsExactly("Malus domestica 'Two' SAME_SPECIES");
    }

    @Test
    void whatIsNotKnownToNeedAPartnerNamesNone() {
        assertThat(Pollination.of(plantOf(6).facts())).isEqualTo(Pollination.NOT_KNOWN);
        assertThat(partners(6)).isEmpty();
    }

    @Test
    void aPlantThatBearsAloneAndNamesPartnersBearsBetterWithThem() {
        assertThat(Pollination.of(facts("self_fertile", "yes"))).isEqualTo(Pollination.ALONE);
        assertThat(Pollination.of(facts("self_fertile", "yes", "pollination_partners", "Vaccinium corymbosum")))
                .isEqualTo(Pollination.BETTER_WITH_OTHER);
    }

    @Test
    void companionsLikeTheSameSiteAndShowAtAnotherTime() {
        List<Companion> companions = new CompanionFinder(new NeedSearch(catalog, index))
                .of(plantOf(1), Optional.empty(), Optional.empty(), NOW, 5);

        assertThat(companions.getFirst().match().plant().name().toString()).isEqualTo("Packera aurea");
        assertThat(companions.getFirst().fills()).isEqualTo(MonthSet.between(Month.APRIL, Month.MAY));
        assertThat(companions)
                .noneMatch(companion -> companion.match().plant().name().genus().equals("Ilex"));
    }

    @Test
    void interestIsWhatIsSeenInEachMonth() {
        Facts facts = facts("bloom", "Jun", "fall_color", "red", "foliage", "evergreen", "foliage_color", "green");

        assertThat(Interest.of(facts))
                .containsEntry(Season.FLOWER, MonthSet.between(Month.JUNE, Month.JUNE))
                .containsEntry(Season.FALL_COLOR, MonthSet.between(Month.OCTOBER, Month.NOVEMBER))
                .containsEntry(Season.FOLIAGE, MonthSet.between(Month.NOVEMBER, Month.MARCH));
        assertThat(Interest.months(facts).contains(Month.AUGUST)).isFalse();
    }
}
