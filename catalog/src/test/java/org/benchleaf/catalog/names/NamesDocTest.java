package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// docs/names.md names a test for every rule, and every kind of note.
class NamesDocTest {
    @Test
    void pointsEveryRuleToATestThatExists() throws IOException {
        Set<String> tests = Stream.of(
                        NameReaderTest.class, NameReaderTest.WildPlants.class, NameReaderTest.CultivatedPlants.class)
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                .map(Method::getName)
                .collect(Collectors.toSet());
        Set<String> named = Files.readAllLines(Path.of("../docs/names.md")).stream()
                .filter(line -> line.startsWith("| ") && line.contains("`"))
                .map(line -> line.substring(0, line.lastIndexOf('|')))
                .map(line -> line.substring(line.lastIndexOf('|') + 1).strip().replace("`", ""))
                .collect(Collectors.toSet());
        assertThat(named).isNotEmpty();
        assertThat(tests).containsAll(named);
    }

    @Test
    void namesEveryKindOfNote() throws IOException {
        String text = Files.readString(Path.of("../docs/names.md"));
        for (NameNote.Kind kind : NameNote.Kind.values()) {
            assertThat(text).contains(kind.name() + (kind.guess() ? " ?" : ")"));
        }
    }
}
