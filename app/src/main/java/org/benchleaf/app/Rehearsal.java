package org.benchleaf.app;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.benchleaf.app.cli.Console;

/// What the build runs once, so that the ahead-of-time cache knows the classes of the commands that people wait for.
/// What they print goes nowhere.
public final class Rehearsal {
    private Rehearsal() {}

    /// @param arguments a folder for the demo
    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[0]);
        Console nowhere = new Console(new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()));
        for (List<String> command : commands(folder)) {
            Main.run(nowhere, Clock.systemDefaultZone(), command.toArray(String[]::new));
        }
    }

    static List<List<String>> commands(Path folder) {
        String workspace = folder.toString();
        String file = folder.resolve("rehearsal.pdf").toString();
        String plant = "Clethra alnifolia";
        return List.of(
                List.of("demo", workspace),
                List.of("print", "sheet", plant, "-o", file, "--workspace", workspace),
                List.of("print", "cards", plant, "-o", file, "--workspace", workspace),
                List.of("print", "labels", plant, "-o", file, "--workspace", workspace),
                List.of("need", "shade, under 5 ft", "--workspace", workspace),
                List.of("name", "lucothee", "--workspace", workspace));
    }
}
