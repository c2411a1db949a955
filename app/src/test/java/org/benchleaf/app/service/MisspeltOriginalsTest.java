package org.benchleaf.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Shop;
import org.benchleaf.catalog.model.PlantRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Callers ask most for plants that are not grown here, and write as they hear.
class MisspeltOriginalsTest {
    private static final int SHORTEST = 7;

    @Test
    void aPlantThatIsNotGrownHereIsFoundByItsNamesWithOneLetterAmiss(@TempDir Path folder) {
        Random random = new Random(5);
        int asked = 0;
        List<String> missed = new ArrayList<>();
        try (Shop shop = Shop.demo(folder)) {
            OriginalFinder originals = shop.benchleaf().originals();
            List<String> names = shop.benchleaf()
                    .references()
                    .commonNames()
                    .filter(name -> name.length() >= SHORTEST)
                    .toList();
            for (String name : names) {
                asked++;
                PlantRecord meant = originals.find(name).plant();
                String typed = amiss(name.toLowerCase(Locale.ROOT), random);
                try {
                    PlantRecord found = originals.find(typed).plant();
                    if (!found.name().genus().equals(meant.name().genus())) {
                        missed.add(typed + " for " + name + ": " + found.name());
                    }
                } catch (Refusal unknown) {
                    missed.add(typed + " for " + name);
                }
            }
        }
        assertThat(asked).isGreaterThan(250);
        assertThat(missed).hasSizeLessThanOrEqualTo(asked / 100);
    }

    /// One letter left out, one too many, another one, or two of them swapped.
    private static String amiss(String name, Random random) {
        int at = 1 + random.nextInt(name.length() - 2);
        char other = (char) ('a' + random.nextInt(26));
        return switch (random.nextInt(4)) {
            case 0 -> name.substring(0, at) + name.substring(at + 1);
            case 1 -> name.substring(0, at) + other + name.substring(at);
            case 2 -> name.substring(0, at) + other + name.substring(at + 1);
            default -> name.substring(0, at) + name.charAt(at + 1) + name.charAt(at) + name.substring(at + 2);
        };
    }
}
