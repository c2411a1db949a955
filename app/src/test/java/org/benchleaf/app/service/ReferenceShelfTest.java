package org.benchleaf.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferenceShelfTest {
    @Test
    void theShopsOwnFileIsReadOnceAndAnewWhenItChanges(@TempDir Path folder) throws IOException {
        Path own = folder.resolve("reference.csv");
        ReferenceShelf shelf = new ReferenceShelf(own);
        ReferencePlants before = shelf.get();
        assertThat(shelf.get()).isSameAs(before);
        assertThat(before.genera()).contains("Berberis").doesNotContain("Zelkova");

        Files.writeString(own, "name,source\nZelkova serrata,from memory\n");
        assertThat(shelf.get().genera()).contains("Berberis", "Zelkova");

        Files.delete(own);
        assertThat(shelf.get().genera()).doesNotContain("Zelkova");
    }
}
