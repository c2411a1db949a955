package org.benchleaf.shared.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.site.Exposure;
import org.junit.jupiter.api.Test;

class VocabularyTest {
    @Test
    void readsWordsInAnyCaseAndWithAnyBlank() {
        assertThat(Term.read(Exposure.class, " Part-Shade ")).isEqualTo(Reading.of(Exposure.PART_SHADE));
        assertThat(Term.readSet(Exposure.class, "full sun; part_sun"))
                .isEqualTo(Reading.of(Set.of(Exposure.FULL_SUN, Exposure.PART_SUN)));
    }

    @Test
    void listsWhatItAcceptsWhenAWordIsUnknown() {
        assertThat(Term.read(Exposure.class, "gloom").refusal()).hasValueSatisfying(problem -> {
            assertThat(problem.key()).isEqualTo("term.unknown");
            assertThat(problem.details())
                    .containsEntry("read", "gloom")
                    .containsEntry("accepted", "full sun, part sun, part shade, full shade");
        });
    }

    @Test
    void readsBackTheCautionsItWrites() {
        String written = "toxic: people, dogs, horses - all parts poisonous if eaten; thorns: people, children";
        List<Caution> cautions = Caution.readList(written).orThrow();
        assertThat(Caution.write(cautions))
                .isEqualTo("toxic: people, dogs, horses - all parts poisonous if eaten; thorns: people, children");
        assertThat(Caution.readList("none known").orThrow()).isEmpty();
    }

    @Test
    void refusesACautionThatNamesNobody() {
        assertThat(Caution.read("toxic").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("caution.form"));
        assertThat(Caution.read("toxic: - seeds").refusal()).isPresent();
        assertThat(Caution.read("toxic: aliens").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("term.unknown"));
    }

    // ISO 3166-2: 50 states, the district, two territories; 13 provinces and territories (from memory)
    @Test
    void knowsStatesAndProvinces() {
        assertThat(Region.all()).hasSize(53 + 13);
        assertThat(Region.read("Pennsylvania").orThrow()).isEqualTo(new Region("US-PA"));
        assertThat(Region.readSet("PA NY, ON").orThrow())
                .containsExactlyInAnyOrder(new Region("US-PA"), new Region("US-NY"), new Region("CA-ON"));
        assertThat(Region.readSet("PA ZZ").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.details()).containsEntry("read", "ZZ"));
    }
}
