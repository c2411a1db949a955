package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.demo.DemoCatalog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferencePlantsTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyFactOfThoseThatComeWithTheProgramIsRead() throws IOException {
        String shop = folder.resolve("shop").toString();
        assertThat(Run.benchleaf("new", shop).code()).isZero();
        for (String file : DemoCatalog.referenceFiles()) {
            Path copy = folder.resolve(Path.of(file).getFileName());
            try (InputStream content = DemoCatalog.open(file)) {
                Files.copy(content, copy);
            }

            Run preview = Run.benchleaf("preview", copy.toString(), "--workspace", shop);

            assertThat(preview.out()).contains(" 0 refused").doesNotContain("Loaded without");
        }
    }
}
