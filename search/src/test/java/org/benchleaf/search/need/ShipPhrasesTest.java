package org.benchleaf.search.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShipPhrasesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Destination HOME = Destination.read("PA").orThrow();

    private final NeedReader reader = new NeedReader(EnglishWords.read(), Optional.of(HOME));

    private List<Shipment> shipments(String sentence) {
        return reader.read(sentence, TODAY).need().wishes().stream()
                .map(WeighedWish::wish)
                .filter(Wish.ShipTo.class::isInstance)
                .map(wish -> ((Wish.ShipTo) wish).shipment())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        evergreen shrubs, ship to PA                        | US-PA
        ship to pa                                          | US-PA
        40 in #3 shipped to Pennsylvania                    | US-PA
        delivered to New York, deer resistant               | US-NY
        sold in West Virginia                               | US-WV
        ship to Suffolk County, New York                    | US-NY / Suffolk
        hedge for a site in Massachusetts                   | US-MA
        shrubs in Pennsylvania                              | US-PA
        shrubs in PA                                        | US-PA
        """)
    void readsWhereItIsShippedTo(String sentence, String place) {
        assertThat(shipments(sentence))
                .containsExactly(
                        Shipment.to(Destination.read(place).orThrow(), TODAY).from(HOME));
    }

    @ParameterizedTest
    @ValueSource(strings = {"native to Pennsylvania", "40 in #3", "red stems in winter", "5 ft in or near shade"})
    void otherPhrasesAreLeftAlone(String sentence) {
        assertThat(shipments(sentence)).isEmpty();
    }

    @Test
    void theWeekAskedForIsTheWeekOfShipping() {
        assertThat(shipments("ship to MA, ready by mid April"))
                .extracting(Shipment::on)
                .containsExactly(LocalDate.of(2027, 4, 12));
    }

    @Test
    void wordInAloneIsTakenWithANote() {
        assertThat(reader.read("shrubs in Pennsylvania", TODAY).notes())
                .extracting(Note::key, Note::readAs)
                .contains(org.assertj.core.groups.Tuple.tuple("in-is-ship-to", "Pennsylvania"));
        assertThat(reader.read("shrubs, ship to PA", TODAY).notes()).isEmpty();
    }
}
