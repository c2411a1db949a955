package org.benchleaf.shared.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TaxonNameTest {
    @Test
    void aVarietyBelongsToItsSpeciesAndToItsGenus() {
        assertThat(new TaxonName("Viburnum opulus var. americanum").lineage())
                .extracting(TaxonName::text)
                .containsExactly("Viburnum opulus var. americanum", "Viburnum opulus", "Viburnum");
        assertThat(new TaxonName("Ilex glabra").lineage())
                .extracting(TaxonName::text)
                .containsExactly("Ilex glabra", "Ilex");
        assertThat(new TaxonName("Ilex").lineage()).extracting(TaxonName::text).containsExactly("Ilex");
    }

    @Test
    void aCultivarIsOfTheLowestTaxonThatItsNameTells() {
        Epithet hybrid = new Epithet(HybridMark.HYBRID, "grandiflora");
        BotanicalName abelia =
                BotanicalName.ofGenus("Abelia").withSpecies(hybrid).withCultivar("Edward Goucher");
        BotanicalName wentworth = new BotanicalName(
                HybridMark.NONE,
                "Viburnum",
                Optional.of(Epithet.of("opulus")),
                Optional.of(new Infraspecific(Rank.VARIETY, Epithet.of("americanum"))),
                Optional.empty(),
                Optional.of("Wentworth"),
                Optional.empty());

        assertThat(TaxonName.of(abelia).text()).isEqualTo("Abelia grandiflora");
        assertThat(TaxonName.of(wentworth).text()).isEqualTo("Viburnum opulus var. americanum");
        assertThat(TaxonName.of(wentworth).species().text()).isEqualTo("Viburnum opulus");
        assertThat(TaxonName.of(BotanicalName.ofGenus("Rosa").withCultivar("Peace"))
                        .isGenus())
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "ilex", "Ilex 'Nana'", "Ilex glabra Nana", "Ilex glabra var.", "Ilex  glabra", "Ilex sp."})
    void otherFormsAreNoNamesOfTaxa(String text) {
        assertThatThrownBy(() -> new TaxonName(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(text);
    }
}
