package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.names.ReadingAssert.assertName;

import java.util.Optional;
import org.benchleaf.catalog.names.NameNote.Kind;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The rules of docs/names.md, one test each; the clause stands beside it. ICN: Shenzhen Code (2018); ICNCP:
/// 9th edition (2016); clause numbers from memory. Where each rule itself was seen stands in docs/names.md.
class NameReaderTest {
    @Nested
    class WildPlants {
        @Test // ICN Art. 20, 23
        void readsGenusAndSpecies() {
            assertName("Acer").genus("Acer").nothingElse();
            assertName("Acer rubrum").genus("Acer").species("rubrum").nothingElse();
            assertName("Symphyotrichum novae-angliae")
                    .genus("Symphyotrichum")
                    .species("novae-angliae")
                    .nothingElse();
        }

        @ParameterizedTest // ICN Art. H.3, Rec. H.3A: the sign stands against the epithet; a letter x is no sign
        @ValueSource(
                strings = {"Abelia ×grandiflora", "Abelia × grandiflora", "Abelia x grandiflora", "Abelia X grandiflora"
                })
        void readsNothospeciesHoweverTheSignIsTyped(String text) {
            assertThat(NameReader.read(text).known()).map(Object::toString).contains("Abelia ×grandiflora");
        }

        @ParameterizedTest
        @CsvSource(textBlock = """
            Abelia xgrandiflora,     Abelia ×grandiflora
            Hamamelis xintermedia,   Hamamelis ×intermedia
            Rhus xanthocarpa,        Rhus xanthocarpa
            Aster xylorrhiza,        Aster xylorrhiza
            xHeucherella tiarelloides, ×Heucherella tiarelloides
            x Heucherella tiarelloides, ×Heucherella tiarelloides
            Xanthoceras sorbifolium, Xanthoceras sorbifolium
            """)
        void tellsTheLetterXOfAHybridFromTheStartOfAWord(String text, String name) {
            assertThat(NameReader.read(text).known()).map(Object::toString).contains(name);
        }

        @Test // ICNCP Art. 24 (graft-chimaeras): the plus sign
        void readsGraftChimaeras() {
            assertName("+Laburnocytisus 'Adamii'")
                    .genus("+Laburnocytisus")
                    .cultivar("Adamii")
                    .nothingElse();
            assertName("+ Laburnocytisus 'Adamii'")
                    .genus("+Laburnocytisus")
                    .cultivar("Adamii")
                    .nothingElse();
        }

        @ParameterizedTest // ICN Art. 24, Rec. 24A; ssp. = subsp.
        @CsvSource(textBlock = """
            Acer saccharum subsp. nigrum,      Acer saccharum subsp. nigrum
            Acer saccharum ssp nigrum,         Acer saccharum subsp. nigrum
            Cornus florida f. rubra,           Cornus florida f. rubra
            Cornus florida forma rubra,        Cornus florida f. rubra
            Hydrangea anomala var petiolaris,  Hydrangea anomala var. petiolaris
            Cornus sericea L. ssp. occidentalis (Torr. & A. Gray) Fosberg, Cornus sericea subsp. occidentalis
            Quercus alba L. f. alba,           Quercus alba f. alba
            """)
        void readsRanksBelowSpecies(String text, String name) {
            assertThat(NameReader.read(text)).isInstanceOf(NameReading.Read.class);
            assertThat(NameReader.read(text).known()).map(Object::toString).contains(name);
        }

        @Test // ICN Art. 24.1: the last rank connects to the species; those between are not part of the name
        void keepsTheLastOfTwoRanks() {
            assertName("Salix repens subsp. repens var. argentea")
                    .genus("Salix")
                    .species("repens")
                    .below("var. argentea")
                    .noted(Kind.MIDDLE_RANK, "subsp. repens")
                    .nothingElse();
        }

        @Test // ICN Art. H.3.1: nothovar.
        void readsRanksOfHybrids() {
            assertName("Mentha ×piperita nothovar. citrata")
                    .genus("Mentha")
                    .species("×piperita")
                    .below("var. ×citrata")
                    .noted(Kind.HYBRID_RANK, "nothovar.")
                    .nothingElse();
        }

        @ParameterizedTest // ICN Art. 46: authors may follow; a label does not show them
        @CsvSource(delimiter = '|', textBlock = """
            Boltonia asteroides (L.) L'Hér.                      | Boltonia asteroides | (L.) L'Hér.
            Ilex glabra (L.) A. Gray                             | Ilex glabra         | (L.) A. Gray
            Acer rubrum Marshall                                 | Acer rubrum         | Marshall
            Hamamelis virginiana L.                              | Hamamelis virginiana| L.
            Hydrangea arborescens L. 'Annabelle'                 | Hydrangea arborescens 'Annabelle' | L.
            Syringa reticulata (Blume) H. Hara                   | Syringa reticulata  | (Blume) H. Hara
            Eleocharis parvula (Roem. & Schult.) Link ex Bluff, Nees & Schauer | Eleocharis parvula | (Roem. & Schult.) Link ex Bluff, Nees & Schauer
            """)
        void setsAuthorsApart(String text, String name, String authors) {
            NameReading reading = NameReader.read(text);
            assertThat(reading).isInstanceOf(NameReading.Read.class);
            assertThat(reading.known()).map(Object::toString).contains(name);
            assertThat(String.join(" ", reading.noted(Kind.AUTHORS))).isEqualTo(authors);
        }

        @Test // USDA PLANTS puts the parents of a hybrid in square brackets
        void setsParentsApart() {
            assertName("Abelia ×grandiflora (Rovelli ex André) Rehder [chinensis × uniflora]")
                    .genus("Abelia")
                    .species("×grandiflora")
                    .noted(Kind.AUTHORS, "(Rovelli ex André)", "Rehder")
                    .noted(Kind.PARENTS, "[chinensis × uniflora]")
                    .nothingElse();
        }

        @Test // ICN Art. H.2: a formula is no name
        void readsAFormulaOnlyPartly() {
            assertName("Magnolia denudata × Magnolia liliiflora")
                    .genus("Magnolia")
                    .species("denudata")
                    .noted(Kind.FORMULA, "× Magnolia liliiflora")
                    .rest("× Magnolia liliiflora")
                    .nothingElse();
        }

        @Test
        void doesNotGuessAMissingRank() {
            assertName("Cornus florida rubra")
                    .genus("Cornus")
                    .species("florida")
                    .noted(Kind.MISSING_RANK, "rubra")
                    .rest("rubra")
                    .nothingElse();
        }

        @Test // practice of editors: the genus may be shortened after its first use
        void fillsAShortGenusOnlyFromTheNameBefore() {
            assertThat(NameReader.read("H. canariensis"))
                    .isEqualTo(new NameReading.Partly(
                            Optional.empty(),
                            "H. canariensis",
                            java.util.List.of(new NameNote(Kind.SHORT_GENUS, "H."))));
            assertThat(NameReader.readAfter(BotanicalName.ofSpecies("Hedera", "helix"), "H. canariensis")
                            .known())
                    .contains(BotanicalName.ofSpecies("Hedera", "canariensis"));
            assertThat(NameReader.readAfter(BotanicalName.ofGenus("Acer"), "H. canariensis"))
                    .isInstanceOf(NameReading.Partly.class);
        }

        @Test
        void takesNoWordThatJoinsTwoNamesForAnEpithet() {
            assertName("Cycas and Zamia species")
                    .genus("Cycas")
                    .noted(Kind.UNNAMED, "and")
                    .rest("and Zamia species")
                    .nothingElse();
        }

        @ParameterizedTest
        @ValueSource(strings = {"Amelanchier spp.", "Amelanchier sp.", "Amelanchier spp", "Amelanchier hybrids"})
        void readsUnnamedSpeciesOnlyPartly(String text) {
            assertName(text)
                    .genus("Amelanchier")
                    .noted(Kind.UNNAMED, text.substring(12))
                    .rest(text.substring(12))
                    .nothingElse();
        }
    }

    @Nested
    class CultivatedPlants {
        @ParameterizedTest // ICNCP Art. 14.1: single quotes; double ones and cv. are wrong but understood
        @ValueSource(
                strings = {
                    "Acer rubrum 'October Glory'",
                    "Acer rubrum ‘October Glory’",
                    "Acer rubrum \"October Glory\"",
                    "Acer rubrum “October Glory”",
                    "Acer rubrum `October Glory´",
                    "Acer rubrum ''October Glory''",
                    "Acer rubrum cv. October Glory",
                    "Acer rubrum cv 'October Glory'",
                    "Acer rubrum ('October Glory')",
                    "Acer rubrum 'October Glory'.",
                    "Acer rubrum 'October Glory,'",
                    "Acer rubrum, 'October Glory'",
                    " Acer  rubrum\t'October\u00a0Glory' ",
                    "ACER RUBRUM 'OCTOBER GLORY'",
                    "ACER RUBRUM OCTOBER GLORY",
                    "Acer rubrum October Glory",
                    "Acer Rubrum 'October Glory'",
                    "acer rubrum 'October Glory'",
                    "Acer rubrum L. 'October Glory'",
                    "Acer rubrum L. October Glory",
                    "Acer rubrum 'October Glory",
                })
        void readsACultivarHoweverItsQuotesAreTyped(String text) {
            assertThat(NameReader.read(text)).isInstanceOf(NameReading.Read.class);
            assertThat(NameReader.read(text).known()).map(Object::toString).contains("Acer rubrum 'October Glory'");
        }

        @Test
        void saysWhenQuotesWereMissing() {
            assertName("Acer rubrum October Glory")
                    .genus("Acer")
                    .species("rubrum")
                    .cultivar("October Glory")
                    .noted(Kind.MISSING_QUOTES, "October Glory")
                    .nothingElse();
        }

        @ParameterizedTest // apostrophes are not quotes
        @CsvSource(quoteCharacter = '`', textBlock = """
            Malus 'Cox's Orange Pippin',     Cox's Orange Pippin
            Syringa 'Rosie O'Grady',         Rosie O'Grady
            Rosa 'Growers' Choice',          Growers' Choice
            Rosa 'Rock 'n' Roll',            Rock 'n' Roll
            Rosa ‘Cox’s Orange’,             Cox's Orange
            Camellia 'Shōjō-no-mai',         Shōjō-no-mai
            Clematis 'Comtesse de Bouchaud', Comtesse de Bouchaud
            Juniperus 'Mr. Bowling',         Mr. Bowling
            """)
        void keepsApostrophesAndAccentsOfAnEpithet(String text, String cultivar) {
            assertThat(NameReader.read(text).known().flatMap(BotanicalName::cultivar))
                    .contains(cultivar);
        }

        @Test // ICNCP Art. 15: round brackets when a cultivar follows
        void readsGroups() {
            assertName("Brassica oleracea Gemmifera Group")
                    .genus("Brassica")
                    .species("oleracea")
                    .group("Gemmifera")
                    .nothingElse();
            assertName("Fagus sylvatica (Atropunicea Group) 'Riversii'")
                    .genus("Fagus")
                    .species("sylvatica")
                    .group("Atropunicea")
                    .cultivar("Riversii")
                    .nothingElse();
            assertName("Rhododendron Northern Lights Gp 'Orchid Lights'")
                    .genus("Rhododendron")
                    .group("Northern Lights")
                    .cultivar("Orchid Lights")
                    .nothingElse();
        }

        @Test // ICNCP Art. 4: a grex is a category of its own, for orchids; the catalog has no place for it
        void readsAGrexOnlyPartly() {
            assertName("Cymbidium Alexanderi gx 'Westonbirt'")
                    .genus("Cymbidium")
                    .cultivar("Westonbirt")
                    .noted(Kind.GREX, "Alexanderi gx")
                    .rest("Alexanderi gx")
                    .nothingElse();
        }

        @ParameterizedTest // ICNCP Art. 17, 31: no quotes, another typeface; plain text has capitals
        @CsvSource(quoteCharacter = '`', textBlock = """
            Rosa 'Madame A. Meilland' PEACE,                    Madame A. Meilland, Peace
            Acer ×freemanii 'Jeffersred' AUTUMN BLAZE,          Jeffersred, Autumn Blaze
            Acer ×freemanii 'Jeffersred' Autumn Blaze®,         Jeffersred, Autumn Blaze
            Acer ×freemanii Autumn Blaze® 'Jeffersred',         Jeffersred, Autumn Blaze
            Acer x freemanii AUTUMN BLAZE® ('Jeffersred'),      Jeffersred, Autumn Blaze
            Acer x freemanii 'Jeffersred' Autumn Blaze (R),     Jeffersred, Autumn Blaze
            Acer x freemanii 'Jeffersred' AUTUMN BLAZE TM PP4864, Jeffersred, Autumn Blaze
            Rosa QUEEN OF THE NIGHT,                            , Queen of the Night
            Rosa 'Knock Out®',                                  , Knock Out
            """)
        void readsTradeDesignations(String text, String cultivar, String trade) {
            NameReading reading = NameReader.read(text);
            assertThat(reading).isInstanceOf(NameReading.Read.class);
            assertThat(reading.known().flatMap(BotanicalName::tradeDesignation)).contains(trade);
            assertThat(reading.known().flatMap(BotanicalName::cultivar)).isEqualTo(Optional.ofNullable(cultivar));
        }

        @ParameterizedTest // ICNCP Art. 14 with App.; PP and PPAF are United States plant patents
        @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            Hydrangea paniculata 'Jane' PP 12,874  | PP 12,874
            Hydrangea paniculata 'Jane' PP12874    | PP12874
            Hydrangea paniculata 'Jane' PPAF       | PPAF
            Hydrangea paniculata 'Jane' (PBR)      | PBR
            Hydrangea paniculata 'Jane' PBR        | PBR
            Hydrangea paniculata 'Jane' USPP12874  | USPP12874
            """)
        void setsMarksOfRightsApart(String text, String mark) {
            assertName(text)
                    .genus("Hydrangea")
                    .species("paniculata")
                    .cultivar("Jane")
                    .noted(Kind.MARK, mark)
                    .nothingElse();
        }

        @ParameterizedTest // common practice, no source: lists write sizes and prices into the cell of the name
        @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            Acer rubrum 'October Glory' #7                 | #7
            Acer rubrum 'October Glory' 3gal               | 3gal
            Acer rubrum 'October Glory', 24-30"            | 24-30"
            Acer rubrum 'October Glory' 5-6' B&B $84.00 ea | 5-6' B&B $84.00 ea
            Acer rubrum 'October Glory' (2.5 in. cal.)     | (2.5 in. cal.)
            """)
        void setsSizesAndPricesApart(String text, String goods) {
            assertName(text)
                    .genus("Acer")
                    .species("rubrum")
                    .cultivar("October Glory")
                    .noted(Kind.GOODS, goods)
                    .nothingElse();
        }

        @Test // no source: whose beginning it is, only the catalog knows
        void leavesAShortenedEpithetOver() {
            assertThat(NameReader.read("Ilex ver. 'Winter Red'"))
                    .isInstanceOfSatisfying(NameReading.Partly.class, partly -> {
                        assertThat(partly.rest()).isEqualTo("ver.");
                        assertThat(partly.noted(Kind.SHORT_EPITHET)).containsExactly("ver.");
                    });
        }

        @Test // no source: in doubt nothing is guessed
        void leavesWordsAfterACultivarOver() {
            assertName("Acer rubrum 'October Glory' Red Maple")
                    .genus("Acer")
                    .species("rubrum")
                    .cultivar("October Glory")
                    .rest("Red Maple")
                    .nothingElse();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"12345", "???", "'October Glory'", "#3", "-", "×", "3 Acer"})
    void saysWhenThereIsNoName(String text) {
        assertThat(NameReader.read(text)).isEqualTo(new NameReading.Unread(Problem.of("name.unknown", text)));
    }

    @Test
    void saysWhenThereIsNothing() {
        assertThat(NameReader.read("  ")).isEqualTo(new NameReading.Unread(Problem.of("name.empty", "  ")));
    }
}
