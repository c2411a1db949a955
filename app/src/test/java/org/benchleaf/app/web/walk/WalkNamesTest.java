package org.benchleaf.app.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.sound.Sounds;
import org.benchleaf.shared.code.PlantKey;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The telephone's look-up of names, in the browser, against the server's: over the names of the demo
/// catalog and of USDA PLANTS, and what people type and recordings make of them. Sources: `SOURCES.md`
/// beside those files.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WalkNamesTest {
    private static final Path WORLD = Path.of("../search/src/test/resources/org/benchleaf/search/names");
    private static final int FIRST = 5;

    private static final String FIND = "async (asked) => {"
            + " const { Names } = await import('/walk/file/names.js');"
            + " const { Sounds } = await import('/walk/file/sounds.js');"
            + " const data = await (await fetch('/walk/plants.json')).json();"
            + " const names = new Names(data.plants, new Sounds(data.sounds));"
            + " return asked.map((text) => names.find(text, 5).map((hit) => hit.plant.key)); }";
    private static final String SOUND = "async (words) => {"
            + " const { Sounds } = await import('/walk/file/sounds.js');"
            + " const data = await (await fetch('/walk/plants.json')).json();"
            + " const sounds = new Sounds(data.sounds);"
            + " return words.map((word) => sounds.of(word)); }";

    private WalkShop shop;
    private Sight sight;

    @BeforeAll
    void open(@TempDir Path folder, Chromium chromium) throws IOException {
        String plants = lines("names.tsv").stream()
                .map(line -> Arrays.stream((line + "\t\t").split("\t", 3))
                        .map(cell -> '"' + cell.strip().replace("\"", "\"\"") + '"')
                        .collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n", "name,synonyms,common_names\n", "\n"));
        shop = WalkShop.open(folder, plants);
        sight = chromium.open(Look.PHONE_LIGHT, options -> options);
        shop.signIn(sight);
        sight.go(shop.at("/walk"));
    }

    @AfterAll
    void close() {
        sight.close();
        shop.close();
    }

    private static List<String> lines(String file) throws IOException {
        return Files.readAllLines(WORLD.resolve(file)).stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .toList();
    }

    @Test
    void everyWordOfEveryNameSoundsAsItDoesOnTheServer() throws IOException {
        List<String> words = lines("names.tsv").stream()
                .flatMap(line -> FoldedName.words(line).stream())
                .distinct()
                .toList();
        assertThat(words).hasSizeGreaterThan(3_000);

        assertThat(sight.page().evaluate(SOUND, words))
                .isEqualTo(words.stream().map(Sounds::of).toList());
    }

    @ParameterizedTest
    @CsvSource({"misspelt.txt, 0.97", "misheard.txt, 0.90"})
    void findsThePlantMeantAmongTheFirstFiveAsTheServerDoes(String file, double share) throws IOException {
        List<String> said = new ArrayList<>();
        List<List<String>> meant = new ArrayList<>();
        for (String line : lines(file)) {
            said.add(line.substring(0, line.indexOf('=')).strip());
            meant.add(FoldedName.words(line.substring(line.indexOf('=') + 1)));
        }
        NameIndex server = shop.benchleaf().names();
        @SuppressWarnings("unchecked")
        List<List<String>> found = (List<List<String>>) sight.page().evaluate(FIND, said);
        List<String> missed = new ArrayList<>();
        int sameFirst = 0;
        int onServer = 0;
        for (int at = 0; at < said.size(); at++) {
            List<String> there = server.find(said.get(at), FIRST).stream()
                    .map(NameHit::plant)
                    .map(PlantKey::text)
                    .toList();
            List<String> here = found.get(at);
            sameFirst += here.stream().findFirst().equals(there.stream().findFirst()) ? 1 : 0;
            onServer += holds(there, meant.get(at)) ? 1 : 0;
            if (!holds(here, meant.get(at))) {
                missed.add(said.get(at) + " = " + meant.get(at));
            }
        }
        int size = said.size();
        String figures = "%s: %d asked; recall@5 here %.3f, on the server %.3f; the same plant first in %.3f"
                .formatted(
                        file,
                        size,
                        1 - missed.size() / (double) size,
                        onServer / (double) size,
                        sameFirst / (double) size);
        System.out.println(figures);
        assertThat(1 - missed.size() / (double) size)
                .as("%s; missed %s", figures, missed)
                .isGreaterThanOrEqualTo(share);
        assertThat(sameFirst / (double) size).as(figures).isGreaterThanOrEqualTo(0.95);
    }

    private boolean holds(List<String> keys, List<String> meant) {
        return keys.stream()
                .flatMap(key -> shop.benchleaf().catalog().plant(new PlantKey(key)).stream())
                .anyMatch(plant -> words(plant).containsAll(meant));
    }

    private static List<String> words(PlantRecord plant) {
        StringBuilder all = new StringBuilder(plant.name().toString());
        plant.synonyms().forEach(synonym -> all.append(' ').append(synonym.text()));
        plant.commonNames().forEach(common -> all.append(' ').append(common.text()));
        return FoldedName.words(all.toString());
    }
}
