package org.benchleaf.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StockSizeTest {
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
        #3,             #3
        # 3,            #3
        #sp4,           #SP4
        #100,           #95
        no. 7,          #7
        19 cm,          19 cm
        2" cal,         2 in cal B&B
        2.5 in cal B&B, 2.5 in cal B&B
        1.75 in caliper bare root, 1.75 in cal bare root
        5-6 ft B&B,     5-6 ft B&B
        18-24",         18-24 in B&B
        2'-3',          2-3 ft B&B
        3-4 ft,         3-4 ft B&B
        """)
    void readsSizesAsTheTradeWritesThem(String text, String written) {
        StockSize size = StockSize.read(text).orThrow();
        assertThat(size.toString()).isEqualTo(written);
        assertThat(StockSize.read(size.toString()).orThrow()).isEqualTo(size);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3 gal", "1 gallon", "5 gal."})
    void refusesGallonsForAClassIsNotAGallon(String text) {
        assertThat(StockSize.read(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("size.gallon"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"#4", "big", "", "99 cm", "2.3 in cal", "3", "60-70 ft", "6-5 ft"})
    void refusesSizesThatTheTradeDoesNotKnow(String text) {
        assertThat(StockSize.read(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("size.unknown"));
    }

    // ANSI Z60.1 container classes, volumes from memory: a US gallon (231 cu in) lies inside the #1, whose least is 152
    @Test
    void leavesTheGapsBetweenContainerClasses() {
        assertThat(ContainerClass.ofVolume(231)).contains(ContainerClass.NO_1);
        assertThat(ContainerClass.ofVolume(152)).contains(ContainerClass.NO_1);
        assertThat(ContainerClass.ofVolume(500)).isEmpty();
        assertThat(ContainerClass.ofVolume(760)).isEmpty();
    }

    // ANSI Z60.1: caliper is taken at 6 in up to and including 4 in, above that at 12 in
    @Test
    void measuresCaliperHigherOnLargerTrees() {
        assertThat(new StockSize.Caliper(16, RootPackage.BALLED_AND_BURLAPPED).measuredAtInches())
                .isEqualTo(6);
        assertThat(new StockSize.Caliper(17, RootPackage.BALLED_AND_BURLAPPED).measuredAtInches())
                .isEqualTo(12);
    }

    @Test
    void standsInTheOrderOfAPriceList() {
        List<String> ordered = Stream.of(
                        "2 in cal B&B", "#7", "5-6 ft B&B", "19 cm", "#1", "#SP4", "#15", "13 cm", "2.5 in cal B&B")
                .map(text -> StockSize.read(text).orThrow())
                .sorted()
                .map(StockSize::toString)
                .toList();
        assertThat(ordered)
                .containsExactly(
                        "13 cm", "19 cm", "#SP4", "#1", "#7", "#15", "5-6 ft B&B", "2 in cal B&B", "2.5 in cal B&B");
    }
}
