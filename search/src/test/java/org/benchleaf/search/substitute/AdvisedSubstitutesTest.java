package org.benchleaf.search.substitute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Lists.advised;
import static org.benchleaf.search.Plants.plant;
import static org.benchleaf.search.substitute.SmallShop.FORTY;
import static org.benchleaf.search.substitute.SmallShop.names;
import static org.benchleaf.search.substitute.SmallShop.of;
import static org.benchleaf.search.substitute.SmallShop.shrub;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What lists and shops name instead, beside what facts say.
class AdvisedSubstitutesTest {
    private static final Publication FLYER =
            new Publication("An agency", Set.of(), "A flyer", "2020", "https://example.org/1");
    private static final Publication COLUMN =
            new Publication("A garden", Set.of(), "A column", "2021", "https://example.org/2");
    private static final Publication LEAFLET =
            new Publication("A county", Set.of(), "A leaflet", "2022", "https://example.org/3");

    @TempDir
    Path folder;

    private SmallShop shop;

    @BeforeEach
    void open() {
        shop = SmallShop.open(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    /// Fothergilla is nearer in all facts, and Clethra is what lists name.
    private SubstituteAnswer findAdvised(Demand demand, Advised... lists) {
        return findAdvised(demand, List.of(), lists);
    }

    private SubstituteAnswer findAdvised(Demand demand, List<WeighedWish> asked, Advised... lists) {
        PlantRecord original = plant(99, of("Euonymus", "alatus"), shrub("120-180 cm", "4-8", "red"));
        return shop.find(original, demand, asked, List.of(lists));
    }

    /// What lists and facts say together of a plant of the catalog.
    private SubstituteAnswer advisedOn(long serial, Advised... lists) {
        return shop.find(shop.plantOf(serial), FORTY, List.of(), List.of(lists));
    }

    @Test
    void ofAPlantWithoutAnyFactOnlyWhatListsNameIsProposed() {
        SubstituteAnswer answer = shop.find(
                plant(99, of("Retama", "monosperma"), Facts.of(List.of())),
                FORTY,
                List.of(),
                List.of(
                        advised("Retama monosperma", "Fothergilla", FLYER),
                        advised("Retama monosperma", "Ceanothus", FLYER),
                        advised("Retama monosperma", "Ceanothus", COLUMN)));

        assertThat(names(answer.all())).containsExactly("Fothergilla major");
        assertThat(answer.advised())
                .as("here or not, what most publishers name first")
                .containsExactly(new TaxonName("Ceanothus"), new TaxonName("Fothergilla"));
    }

    @Test
    void aPlantOfTheCatalogWithoutAnyFactIsReplacedByItsSistersToo() {
        shop.put(7, of("Retama", "monosperma"), Facts.of(List.of()));
        shop.put(8, of("Retama", "monosperma").withCultivar("White Veil"), Facts.of(List.of()));
        shop.stock(8, "#3, 100");

        assertThat(names(advisedOn(7, advised("Retama monosperma", "Fothergilla", FLYER))
                        .all()))
                .contains("Retama monosperma 'White Veil'", "Fothergilla major");
    }

    @Test
    void whatSeveralPublishedListsNameInsteadComesBeforeWhatIsAsLikeAndSaysWhoNamesIt() {
        assertThat(names(findAdvised(FORTY).best())).startsWith("Fothergilla major");

        SubstituteAnswer advised = findAdvised(
                FORTY,
                advised("Euonymus alatus", "Clethra alnifolia", FLYER),
                advised("Euonymus", "Clethra", COLUMN),
                advised("Euonymus alatus", "Clethra", LEAFLET));

        assertThat(names(advised.best())).startsWith("Clethra alnifolia");
        assertThat(advised.best().getFirst().namedBy()).containsExactly("A county", "A garden", "An agency");
        assertThat(advised.best().get(1).namedBy()).isEmpty();
    }

    @Test
    void aShopsOwnWordComesBeforeWhatIsAsLikeAndBehindWhatMeetsMoreOfWhatIsAsked() {
        Advised own = advised("Euonymus alatus", "Clethra alnifolia", Publication.own("This shop"));
        WeighedWish red =
                WeighedWish.of(new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.of(ColorFamily.RED)));

        assertThat(names(findAdvised(FORTY, own).best())).startsWith("Clethra alnifolia");
        assertThat(names(findAdvised(FORTY, List.of(red.weighing(0.5)), own).best()))
                .startsWith("Fothergilla major");
    }

    @Test
    void whatListsNameIsNotProposedWhenItCannotBeHad() {
        shop.stock(5, "#3, 0");

        assertThat(names(findAdvised(FORTY, advised("Euonymus alatus", "Clethra alnifolia", FLYER))
                        .all()))
                .doesNotContain("Clethra alnifolia");
    }
}
