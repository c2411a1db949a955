package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.rule.SaleStanding;
import org.junit.jupiter.api.Test;

class WordsTest {
    /// Families of words asked for by the name of a constant or of a wish, tested one by one with the wording.
    private static final List<String> FAMILIES = List.of(
            "term.",
            "problem.",
            "wish.",
            "met.",
            "missed.",
            "unknown.",
            "short.",
            "month.",
            "money.",
            "fact.",
            "standing.",
            "caution.",
            "card.water.",
            "stand.person.",
            "stand.rule.",
            "stock.now.",
            "stock.from.",
            "stock.more.",
            "rules.country.",
            "weight.",
            "color.",
            "shade.",
            "unit.",
            "mark.",
            "group.");

    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.BOTH);

    @Test
    void everyWordOfSheetsCardsAndPagesIsUsed() throws IOException {
        Set<String> used = asked();
        for (String file : List.of("sheet", "documents", "web")) {
            Properties own = new Properties();
            own.load(new StringReader(ContentPack.builtIn().text("wording/" + file + "_en.properties")));
            List<String> idle = own.stringPropertyNames().stream()
                    .filter(key -> !used.contains(key) && FAMILIES.stream().noneMatch(key::startsWith))
                    .sorted()
                    .toList();
            assertThat(idle).isEmpty();
        }
    }

    @Test
    void everyWordThatTemplatesAskForIsThere() throws IOException {
        Matcher asked = Pattern.compile("words\\[\"([^\"]+)\"]").matcher(templates());
        int count = 0;
        while (asked.find()) {
            assertThat(words.keys()).contains(asked.group(1));
            count++;
        }
        assertThat(count).isGreaterThan(20);
    }

    @Test
    void everyFactAndStandingHasItsHeading() {
        for (FactKind kind : FactKind.values()) {
            assertThat(words.text("fact." + kind.name())).isNotBlank();
        }
        for (SaleStanding standing : SaleStanding.values()) {
            assertThat(words.text("standing." + standing.name())).isNotBlank();
        }
    }

    @Test
    void everyRefusalOfAPrintHasItsSentence() throws IOException {
        Matcher refused =
                Pattern.compile("Problem\\.of\\(\\s*\"(print\\.[^\"]+)\"").matcher(java(Path.of("src/main/java")));
        while (refused.find()) {
            assertThat(words.keys()).contains("problem." + refused.group(1));
        }
    }

    private static Set<String> asked() throws IOException {
        Set<String> asked = new TreeSet<>();
        Matcher literal = Pattern.compile("\"([a-z][A-Za-z.-]+)\"")
                .matcher(java(Path.of("src/main/java"))
                        + java(Path.of("../content/src/main/java"))
                        + java(Path.of("../app/src/main/java"))
                        + templates());
        while (literal.find()) {
            asked.add(literal.group(1));
        }
        return asked;
    }

    private static String templates() throws IOException {
        return all(Path.of("../content/src/main/resources/org/benchleaf/content/templates"), ".ftlh");
    }

    private static String java(Path folder) throws IOException {
        return Files.isDirectory(folder) ? all(folder, ".java") : "";
    }

    private static String all(Path folder, String ending) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(ending)).toList()) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
