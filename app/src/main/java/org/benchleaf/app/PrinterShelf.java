package org.benchleaf.app;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.render.Calibration;
import org.benchleaf.shared.Problem;

/// What was measured of the shop's printers, by the names it gives them: `printers.properties` in its workspace, one
/// line a printer or tray, `name = right mm, down mm, stretch across, stretch down`.
public final class PrinterShelf {
    public static final String FILE = "printers.properties";
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,39}");

    private final Path file;

    public PrinterShelf(Workspace workspace) {
        this.file = workspace.folder().resolve(FILE);
    }

    /// @throws Refusal when there is none of that name
    public Calibration printer(String name) {
        Map<String, Calibration> known = read();
        Calibration found = known.get(name.strip());
        if (found == null) {
            throw new Refusal(Problem.of("printer.unknown", name).with("accepted", String.join(", ", known.keySet())));
        }
        return found;
    }

    /// Every name, in their order.
    public List<String> names() {
        return List.copyOf(read().keySet());
    }

    /// Keeps what was measured; another printer of the name is replaced.
    ///
    /// @throws Refusal when the name cannot be one, or the file not be written
    public void keep(String name, Calibration calibration) {
        if (!NAME.matcher(name.strip()).matches()) {
            throw new Refusal(Problem.of("printer.name", name));
        }
        Map<String, Calibration> all = read();
        all.put(name.strip(), calibration);
        String text = all.entrySet().stream()
                .map(one -> one.getKey().replace(" ", "\\ ") + " = " + text(one.getValue()) + "\n")
                .collect(Collectors.joining(
                        "", "# printer = mm to the right, mm down, stretch across, stretch down; measured\n", ""));
        try {
            Path partly = Files.createTempFile(file.getParent(), ".printers-", ".tmp");
            Files.writeString(partly, text);
            Files.move(partly, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("workspace.read-only", file.toString()));
        }
    }

    private static String text(Calibration one) {
        return String.format(
                Locale.ROOT, "%.3f, %.3f, %.4f, %.4f", one.rightMm(), one.downMm(), one.scaleX(), one.scaleY());
    }

    private Map<String, Calibration> read() {
        Map<String, Calibration> known = new TreeMap<>();
        if (!Files.isRegularFile(file)) {
            return known;
        }
        Properties lines = new Properties();
        try {
            lines.load(new StringReader(Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Refusal(Problem.of("settings.unreadable", file.toString()));
        }
        for (String name : lines.stringPropertyNames()) {
            known.put(name, calibration(name, lines.getProperty(name)));
        }
        return known;
    }

    private Calibration calibration(String name, String text) {
        String[] parts = text.split(",", -1);
        try {
            return new Calibration(
                    Double.parseDouble(parts[0]),
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3]));
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException broken) {
            throw new Refusal(Problem.of("settings.value", text)
                    .with("key", name)
                    .with("file", file.toString())
                    .with("accepted", "0.800, -0.500, 1.0000, 1.0000"));
        }
    }
}
