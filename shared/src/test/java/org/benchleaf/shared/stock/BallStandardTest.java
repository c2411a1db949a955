package org.benchleaf.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BallStandardTest {
    // ANSI Z60.1: 2 in -> 24, 3 -> 32, 4 -> 42, 5 -> 54 seen (promisekit.org copy); the others from memory. The rule of
    // thumb of ten inches of ball an inch of caliper is looser at every row.
    @ParameterizedTest
    @CsvSource({
        "0.5, 12",
        "0.75, 14",
        "1, 16",
        "1.25, 18",
        "1.5, 20",
        "1.75, 22",
        "2, 24",
        "2.5, 28",
        "3, 32",
        "3.5, 38",
        "4, 42",
        "4.5, 48",
        "5, 54",
        "6, 60",
        "7, 70",
        "8, 80"
    })
    void asksShadeTreesForABallByTheirCaliper(double inches, int ball) {
        StockSize size = new StockSize.Caliper((int) (inches * 4), RootPackage.BALLED_AND_BURLAPPED);
        assertThat(BallStandard.leastInches(size, BallStandard.Kind.SHADE_TREE)).contains(ball);
        assertThat(ball).isGreaterThanOrEqualTo((int) (10 * inches));
    }

    // ANSI Z60.1, from memory
    @ParameterizedTest
    @CsvSource({
        "18-24 in, 10, 10",
        "2-3 ft, 12, 12",
        "3-4 ft, 14, 14",
        "4-5 ft, 16, 16",
        "5-6 ft, 20, 18",
        "6-7 ft, 22, 20",
        "7-8 ft, 24, 22",
        "8-9 ft, 27, 24",
        "9-10 ft, 30, 26"
    })
    void asksConifersForAtLeastAsMuchAsShrubs(String height, int conifer, int shrub) {
        StockSize size = StockSize.read(height).orThrow();
        assertThat(BallStandard.leastInches(size, BallStandard.Kind.CONE_TYPE_CONIFER))
                .contains(conifer);
        assertThat(BallStandard.leastInches(size, BallStandard.Kind.DECIDUOUS_SHRUB))
                .contains(shrub);
    }

    @Test
    void asksNothingOfBareRootsPotsAndSizesBeyondTheTable() {
        for (String size : new String[] {"2 in cal bare root", "#3", "19 cm", "9 in cal", "12-14 ft bare root"}) {
            assertThat(BallStandard.leastInches(StockSize.read(size).orThrow(), BallStandard.Kind.CONE_TYPE_CONIFER))
                    .as(size)
                    .isEqualTo(Optional.empty());
        }
    }

    // a city's specification, docucenter.sibfl.net page 173, 2005: 75 % below 20 in, 65 % to 30, 60 % to 48
    @ParameterizedTest
    @CsvSource({"16, 12", "20, 13", "28, 19", "32, 20", "48, 29"})
    void asksBallsForTheirDepth(int across, int deep) {
        assertThat(BallStandard.leastDepthInches(across)).isEqualTo(deep);
    }

    // ANSI Z60.1, from memory: 6, 9, 12, 15, 18, 24 in; then feet, from 6 ft in steps of one or two
    @ParameterizedTest
    @CsvSource({
        "6, 9, true",
        "12, 15, true",
        "15, 18, true",
        "18, 24, true",
        "24, 36, true",
        "60, 72, true",
        "72, 96, true",
        "18, 21, false",
        "24, 30, false",
        "24, 48, false",
        "7, 10, false",
        "16, 20, false"
    })
    void knowsTheSpansOfTheTrade(int low, int high, boolean usual) {
        assertThat(BallStandard.isUsual(low, high)).isEqualTo(usual);
    }

    @ParameterizedTest
    @CsvSource({"#3, #3, 3 gal", "#1, #1, 1 gal", "#SP4, #SP4, #SP4", "19 cm, 19 cm, 19 cm"})
    void callsAClassAGallonOnlyWhereTheShopDoes(String size, String number, String gallon) {
        StockSize read = StockSize.read(size).orThrow();
        assertThat(ContainerNaming.NUMBER.text(read)).isEqualTo(number);
        assertThat(ContainerNaming.GALLON.text(read)).isEqualTo(gallon);
    }

    @ParameterizedTest
    @CsvSource({"3 gal, #3", "15-gallon, #15", "1 gal., #1", "#7, #7", "2 in cal, 2 in cal B&B"})
    void readsGallonsAsClassesWhereTheShopCallsThemSo(String text, String size) {
        assertThat(StockSize.read(text, ContainerNaming.GALLON).orThrow()).hasToString(size);
    }

    @Test
    void refusesGallonsOfNoClass() {
        assertThat(StockSize.read("4 gal", ContainerNaming.GALLON).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("size.no-class"));
    }

    @Test
    void keepsSpreadApartFromHeight() {
        StockSize spread = StockSize.read("15-18\" spread").orThrow();
        assertThat(spread).isEqualTo(new StockSize.Spread(15, 18, RootPackage.BALLED_AND_BURLAPPED));
        assertThat(StockSize.read(spread.toString()).orThrow()).isEqualTo(spread);
        assertThat(spread.compareTo(StockSize.read("18-24 in").orThrow())).isNegative();
    }

    // Reference table of container classes (ANSI Z60.1, from memory): cubic inches and liters, 1 cu in = 0.016387 L
    @ParameterizedTest
    @CsvSource({
        "#SP1, 6.5, 8, 0.11",
        "#SP5, 93, 136, 1.52",
        "#1, 152, 251, 2.49",
        "#2, 320, 474, 5.24",
        "#3, 628, 742, 10.29",
        "#5, 785, 1242, 12.86",
        "#7, 1337, 1790, 21.91",
        "#15, 2768, 3696, 45.36",
        "#45, 9356, 11434, 153.32",
        "#100, 20790, 25410, 340.69"
    })
    void holdsTheVolumesOfTheClasses(String mark, double least, double most, double leastLiters) {
        ContainerClass of = ContainerClass.ofMark(mark).orElseThrow();
        assertThat(of.minCubicInches()).isEqualTo(least);
        assertThat(of.maxCubicInches()).isEqualTo(most);
        assertThat(of.minCubicInches() * 0.016387).isEqualTo(leastLiters, org.assertj.core.api.Assertions.within(0.01));
    }
}
