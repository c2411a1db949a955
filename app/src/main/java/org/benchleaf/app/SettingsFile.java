package org.benchleaf.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.shared.Problem;

/// Changes some lines of a workspace's settings and leaves the others, with their remarks, as they are. The file is
/// replaced as a whole, and only by one that reads back.
public final class SettingsFile {
    private final Path file;

    public SettingsFile(Workspace workspace) {
        this.file = workspace.settingsFile();
    }

    /// @param values by their keys; a key that the file lacks is added at its end
    /// @return what the file says now
    /// @throws Refusal when a value has no meaning, or the file cannot be written; nothing is changed then
    public Settings change(Map<String, String> values) {
        try {
            Path partly = Files.createTempFile(file.toAbsolutePath().getParent(), ".settings-", ".tmp");
            try {
                Files.writeString(partly, changed(Files.readString(file), values));
                Settings read = read(partly);
                Files.move(partly, file, StandardCopyOption.REPLACE_EXISTING);
                return read;
            } finally {
                Files.deleteIfExists(partly);
            }
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("workspace.read-only", file.toString()));
        }
    }

    /// Messages name the file that people know.
    private Settings read(Path partly) {
        try {
            return Settings.read(partly);
        } catch (Refusal refusal) {
            throw new Refusal(
                    refusal.problem().details().containsKey("file")
                            ? refusal.problem().with("file", Settings.FILE)
                            : refusal.problem());
        }
    }

    private static String changed(String text, Map<String, String> values) {
        Map<String, String> left = new LinkedHashMap<>(values);
        List<String> lines = new ArrayList<>();
        for (String line : text.lines().toList()) {
            String key = line.isBlank() || line.startsWith("#") || line.indexOf('=') < 0
                    ? ""
                    : line.substring(0, line.indexOf('=')).strip();
            lines.add(values.containsKey(key) ? line(key, values.getOrDefault(key, "")) : line);
            left.remove(key);
        }
        left.forEach((key, value) -> lines.add(line(key, value)));
        return String.join("\n", lines) + "\n";
    }

    private static String line(String key, String value) {
        return key + " = " + value.replace("\\", "\\\\").replaceAll("\\R", " ").strip();
    }
}
