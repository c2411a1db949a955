package org.benchleaf.search.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestNameTest {
    /// Of one list; from memory, as callers write and say them.
    private static final List<String> NAMES = List.of(
            "Berberis thunbergii",
            "Japanese barberry",
            "barberry",
            "Euonymus alatus",
            "burning bush",
            "Acer platanoides",
            "Norway maple",
            "maple",
            "myrtle",
            "Ligustrum",
            "privet",
            "Aralia spinosa",
            "Aralia",
            "Lamium maculatum",
            "Cedrus",
            "Fagus",
            "Grace",
            "azalea",
            "Japanese stiltgrass");

    @ParameterizedTest
    @CsvSource({
        "barbery, barberry",
        "japanese barbery, Japanese barberry",
        "berberis thunbergi, Berberis thunbergii",
        "burr bris thun berg eye, Berberis thunbergii",
        "burning bsh, burning bush",
        "you on imus alatus, Euonymus alatus",
        "norway mapel, Norway maple",
        "lie gustrum, Ligustrum",
        "privit, privet",
        "mapel, maple",
        "japanese stilt grass, Japanese stiltgrass",
        // a letter away from both, and it sounds like one of them
        "azalia, azalea"
    })
    void findsTheNameThatWasMeant(String typed, String meant) {
        assertThat(new NearestName(typed).among(NAMES.stream())).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mahogany",
                "sweet spire",
                "itea",
                "foo",
                "",
                "ma",
                "no such plant at all",
                // other plants, one of them deadly
                "Conium maculatum",
                "citrus",
                "ficus",
                "grape"
            })
    void takesNothingThatIsFar(String typed) {
        assertThat(new NearestName(typed).among(NAMES.stream())).isEmpty();
    }

    @Test
    void ofEqualsTheFirstIsTaken() {
        assertThat(new NearestName("alder").among(List.of("elder", "older").stream()))
                .contains("elder");
    }
}
