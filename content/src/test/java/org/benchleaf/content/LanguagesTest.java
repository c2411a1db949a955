package org.benchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.ContainerNaming;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Spanish and French are our own translation, from memory, no source.
class LanguagesTest {
    private static final List<String> ON_PAPER = List.of("terms", "colors", "sheet", "documents");
    private static final Pattern VALUE = Pattern.compile("\\{([^}?]+)[^}]*}");

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr"})
    void everyWordOnPaperStandsInEveryLanguageWithTheSameValues(String language) throws IOException {
        for (String file : ON_PAPER) {
            Properties english = words(file, "en");
            Properties own = words(file, language);
            assertThat(own.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
            for (String key : english.stringPropertyNames()) {
                assertThat(values(own.getProperty(key))).as(key).isEqualTo(values(english.getProperty(key)));
                assertThat(own.getProperty(key)).as(key).isNotBlank();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr"})
    void hardlyAWordIsLeftInEnglish(String language) throws IOException {
        Properties english = words("terms", "en");
        Properties own = words("terms", language);
        long same = english.stringPropertyNames().stream()
                .filter(key -> english.getProperty(key).equals(own.getProperty(key)))
                .count();
        // words that both languages share: columnar, no, oval, irregular, fruit, violet ...
        assertThat(same).isLessThan(english.size() / 8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | 3–5 ft (0.9–1.5 m) | $12,250.00 | #7, tree form | 5–6 ft B&B | 12 April 2027 | deep red
            es | 3–5 pies (0.9–1.5 m) | $12,250.00 | #7, forma de árbol | 5–6 pies cepellón (B&B) | 12 de abril de 2027 | rojo intenso
            fr | 3–5 pi (0,9–1,5 m) | 12 250,00 $ | #7, sur tige | 5–6 pi en motte (B&B) | 12 avril 2027 | rouge profond
            """)
    void numbersUnitsSizesAndColorsAreWrittenAsTheLanguageDoes(
            String language, String length, String money, String size, String height, String day, String color) {
        Wording words = open(language);
        assertThat(words.length(new LengthRange(90, 150))).isEqualTo(length);
        assertThat(words.money(Money.usDollars("12250.00")).replace('\u00A0', ' '))
                .isEqualTo(money);
        assertThat(words.size(StockSize.read("#7").orThrow(), ItemForm.TREE_FORM))
                .isEqualTo(size);
        assertThat(words.size(StockSize.read("5-6 ft B&B").orThrow())).isEqualTo(height);
        assertThat(words.date(YearWeek.read("2027-04-12").orThrow().monday())).isEqualTo(day);
        assertThat(words.color(PlantColor.read("deep red #8B1E2D").orThrow())).isEqualTo(color);
    }

    @Test
    void cautionsAndLightAreSentencesOfTheLanguage() {
        Caution yew = Caution.read("toxic: people, dogs").orThrow();
        assertThat(open("es").caution(yew)).isEqualTo("Tóxica para personas y perros");
        assertThat(open("fr").caution(yew)).isEqualTo("Toxique pour les personnes et les chiens");
        Set<Exposure> light = Set.of(Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE);
        assertThat(open("es").exposure(light)).isEqualTo("de pleno sol a media sombra");
        assertThat(open("fr").exposure(light)).isEqualTo("plein soleil à mi-ombre");
    }

    @Test
    void everyWordOfAColorFamilyIsKnownAndAStrangeOneStaysAsItWasWritten() {
        for (ColorFamily family : ColorFamily.values()) {
            PlantColor color = new PlantColor(family.term(), family.typical());
            assertThat(open("en").color(color)).isEqualTo(family.term());
            assertThat(open("es").color(color)).isNotEqualTo(family.term());
        }
        assertThat(open("fr").color(PlantColor.read("smoky quartz #998877").orThrow()))
                .isEqualTo("smoky quartz");
        assertThat(open("fr").color(PlantColor.read("pale yellow-green #DDEEBB").orThrow()))
                .isEqualTo("vert jaune pâle");
    }

    @Test
    void answersToANeedAreSpanishWithTheSameValues() throws IOException {
        Properties english = words("wishes", "en");
        assertThat(words("wishes", "es").stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        english.putAll(words("app", "en"));
        Properties own = words("wishes", "es");
        own.putAll(words("app", "es"));
        for (String key : own.stringPropertyNames()) {
            assertThat(values(own.getProperty(key))).as(key).isEqualTo(values(english.getProperty(key, "")));
        }
        assertThat(open("es").text("answer.option")).isEqualTo("(opción)");
    }

    @Test
    void messagesAreEnglishWhereALanguageHasNone() {
        assertThat(open("es").text("problem.print.nothing"))
                .isEqualTo(open("en").text("problem.print.nothing"));
    }

    @Test
    void aLanguageWithoutPaperIsRefused() {
        assertThatThrownBy(() -> open("de"))
                .isInstanceOf(MissingContent.class)
                .hasMessageContaining("wording/terms_de.properties");
    }

    private static Wording open(String language) {
        return Wording.open(
                ContentPack.builtIn(), Locale.forLanguageTag(language), LengthStyle.BOTH, ContainerNaming.NUMBER);
    }

    private static Properties words(String file, String language) throws IOException {
        Properties words = new Properties();
        words.load(new StringReader(ContentPack.builtIn().text("wording/" + file + "_" + language + ".properties")));
        return words;
    }

    private static Set<String> values(String text) {
        Set<String> values = new TreeSet<>();
        VALUE.matcher(text).results().forEach(found -> values.add(found.group(1)));
        return values;
    }
}
