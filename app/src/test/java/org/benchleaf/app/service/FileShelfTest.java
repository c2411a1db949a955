package org.benchleaf.app.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileShelfTest {
    @TempDir
    private Path folder;

    @Test
    void theShopsOwnReferencesAreReadOnceAndAnewWhenTheyChange() throws IOException {
        Path own = folder.resolve("reference.csv");
        FileShelf<ReferencePlants> shelf = new FileShelf<>(own, ReferencePlants::read);
        assertThat(shelf.get()).isSameAs(shelf.get());
        assertThat(shelf.get().genera()).contains("Berberis").doesNotContain("Zelkova");

        Files.writeString(own, "name,source\nZelkova serrata,from memory\n");
        assertThat(shelf.get().genera()).contains("Berberis", "Zelkova");

        Files.delete(own);
        assertThat(shelf.get().genera()).doesNotContain("Zelkova");
    }

    @Test
    void whatCannotBeReadChangesNothingUntilItIsMended() throws IOException {
        Path own = folder.resolve("number.txt");
        FileShelf<Integer> shelf = new FileShelf<>(own, FileShelfTest::number);
        Files.writeString(own, "seven");
        assertThatThrownBy(shelf::get).isInstanceOf(NumberFormatException.class);

        Files.writeString(own, "7");
        assertThat(shelf.get()).isEqualTo(7);
        Files.writeString(own, "eight");
        assertThat(shelf.get()).isEqualTo(7);
        Files.writeString(own, "10");
        assertThat(shelf.get()).isEqualTo(10);
    }

    private static int number(Path file) {
        try {
            return Integer.parseInt(Files.readString(file));
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
