package org.benchleaf.shared.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class BotanicalNameTest {
    private static final BotanicalName MARIESII = new BotanicalName(
            HybridMark.NONE,
            "Viburnum",
            Optional.of(Epithet.of("plicatum")),
            Optional.of(new Infraspecific(Rank.FORM, Epithet.of("tomentosum"))),
            Optional.empty(),
            Optional.of("Mariesii"),
            Optional.empty());
    private static final BotanicalName WITCH_HAZEL = BotanicalName.ofGenus("Hamamelis")
            .withSpecies(new Epithet(HybridMark.HYBRID, "intermedia"))
            .withCultivar("Arnold Promise");

    // ICN Art. 24 (rank between the epithets) and ICNCP Art. 14 (single quotes round the epithet)
    @Test
    void writesRankAndCultivarByTheCodes() {
        assertThat(MARIESII).hasToString("Viburnum plicatum f. tomentosum 'Mariesii'");
    }

    // ICN Rec. H.3A: the multiplication sign stands against the epithet
    @Test
    void writesTheHybridSignAgainstTheEpithet() {
        assertThat(WITCH_HAZEL).hasToString("Hamamelis ×intermedia 'Arnold Promise'");
    }

    @Test
    void setsLatinInItalicsAndMarksInRoman() {
        assertThat(MARIESII.parts())
                .extracting(NamePart::type)
                .containsExactly(
                        NamePart.Type.LATIN,
                        NamePart.Type.LATIN,
                        NamePart.Type.ROMAN,
                        NamePart.Type.LATIN,
                        NamePart.Type.CULTIVAR);
    }

    @Test
    void inheritsFromItsTaxonThenItsSpecies() {
        BotanicalName form = MARIESII.taxonAbove().orElseThrow();
        assertThat(form).hasToString("Viburnum plicatum f. tomentosum");
        assertThat(form.taxonAbove().orElseThrow()).hasToString("Viburnum plicatum");
        assertThat(form.taxonAbove().orElseThrow().taxonAbove()).isEmpty();
        assertThat(BotanicalName.ofGenus("Fothergilla")
                        .withCultivar("Mount Airy")
                        .taxonAbove())
                .isEmpty();
    }

    // sorting ignores ×, quotes and ranks: common practice, no source
    @Test
    void sortsWithoutMarks() {
        assertThat(WITCH_HAZEL.sortKey()).isEqualTo("hamamelis intermedia arnold promise");
        assertThat(MARIESII.sortKey()).isEqualTo("viburnum plicatum tomentosum mariesii");
        BotanicalName clematis = BotanicalName.ofGenus("Clematis");
        assertThat(clematis.withCultivar("Rosie O'Grady").sortKey()).isEqualTo("clematis rosie ogrady");
        assertThat(clematis.withCultivar("Königskind No. 5").sortKey()).isEqualTo("clematis konigskind no 5");
    }

    @Test
    void refusesImpossibleParts() {
        assertThatThrownBy(() -> BotanicalName.ofGenus("acer")).hasMessage("not a genus: acer");
        assertThatThrownBy(() -> Epithet.of("Rubrum")).hasMessage("not an epithet: Rubrum");
    }

    // ICN by custom of print, ICNCP Art. 14 and 17 (from memory): Latin in italics, the rest in roman
    @Test
    void writesHtmlWithEachPartInItsType() {
        BotanicalName blaze = new BotanicalName(
                HybridMark.NONE,
                "Acer",
                Optional.of(new Epithet(HybridMark.HYBRID, "freemanii")),
                Optional.empty(),
                Optional.empty(),
                Optional.of("Jeffersred"),
                Optional.of("Autumn Blaze & Co"));
        assertThat(NameHtml.of(blaze))
                .isEqualTo("<i>Acer</i> ×<i>freemanii</i> 'Jeffersred'"
                        + " <span class=\"name-trade\">AUTUMN BLAZE &amp; CO</span>");
    }

    @Test
    void leavesRankAndGroupOfACultivarOffTheLabel() {
        BotanicalName mariesii = new BotanicalName(
                HybridMark.NONE,
                "Viburnum",
                Optional.of(Epithet.of("plicatum")),
                Optional.of(new Infraspecific(Rank.FORM, Epithet.of("tomentosum"))),
                Optional.of("Doublefile"),
                Optional.of("Mariesii"),
                Optional.empty());
        assertThat(mariesii.labelName()).hasToString("Viburnum plicatum 'Mariesii'");
        assertThat(mariesii.taxonAbove().orElseThrow().labelName()).hasToString("Viburnum plicatum f. tomentosum");
    }
}
