package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.benchleaf.app.cli.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalTest {
    @Test
    void everyCommandOfItDoesItsWork(@TempDir Path folder) {
        for (List<String> command : Rehearsal.commands(folder.resolve("demo"))) {
            StringWriter said = new StringWriter();
            Console console = new Console(new PrintWriter(said), new PrintWriter(said));
            assertThat(Main.run(console, Clock.systemDefaultZone(), command.toArray(String[]::new)))
                    .as("%s: %s", command, said)
                    .isZero();
        }
    }
}
