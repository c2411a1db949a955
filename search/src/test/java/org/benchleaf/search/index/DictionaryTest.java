package org.benchleaf.search.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.search.Lists;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DictionaryTest {
    private static final List<String> SPECIES = List.of(
            "Ilex",
            "Ilex verticillata",
            "Ilex glabra",
            "Itea virginica",
            "Itea",
            "Acer rubrum",
            "Acer freemanii",
            "Viburnum opulus",
            "Viburnum opulus var. americanum");
    private static final List<String> GENERA = List.of("Ilex", "Itea", "Acer");

    static List<Wish> wishes() {
        return List.of(
                new Wish.OfSpecies("Ilex", "glabra"),
                new Wish.NotOfSpecies("Ilex", "glabra"),
                new Wish.OfSpecies("Itea", "ilicifolia"),
                new Wish.NotOfSpecies("Quercus", "alba"),
                new Wish.OfSpecies("Viburnum", "opulus"),
                new Wish.OfGenus("Ilex"),
                new Wish.NotOfGenus("Ilex"),
                new Wish.OfGenus("Quercus"),
                Lists.namedInstead(
                        "Berberis thunbergii",
                        Map.of("Ilex", 1, "Ilex glabra", 3, "Acer rubrum", 2, "Viburnum opulus var. americanum", 4)));
    }

    @ParameterizedTest
    @MethodSource("wishes")
    void tellsOfFewNamesWhatTheJudgeSaysOfEachOfAll(Wish wish) {
        Basis basis = Basis.of(wish).orElseThrow();
        Dictionary dictionary = new Dictionary(basis);
        (basis == Basis.GENUS ? GENERA : SPECIES).forEach(dictionary::code);

        Dictionary.FewNames few =
                dictionary.outcomesOf(wish, Basis.toldApart(wish).orElseThrow());
        Map<Integer, Dictionary.ToldApart> told =
                few.told().stream().collect(Collectors.toMap(Dictionary.ToldApart::code, Function.identity()));
        short[] judged = dictionary.outcomes(wish);
        for (int code = 0; code < judged.length; code++) {
            int outcome = told.containsKey(code) ? told.get(code).outcome() : few.usual();
            assertThat(outcome).as("%s for name %d", wish, code).isEqualTo(judged[code]);
        }
    }
}
