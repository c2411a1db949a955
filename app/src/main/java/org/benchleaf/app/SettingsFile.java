package org.benchleaf.app;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;

/// The file of a workspace's settings, to be shown and changed. A change is tried before it is made: settings that
/// cannot be read are never left behind, and what else stands in the file, remarks too, stays as it is.
public final class SettingsFile {
    private static final Pattern LINE = Pattern.compile("\\s*([A-Za-z.]+)\\s*[=:].*");

    private final Path file;

    public SettingsFile(Workspace workspace) {
        this.file = workspace.settingsFile();
    }

    /// Every setting that stands in the file, by its key.
    public Map<String, String> values() {
        Properties read = new Properties();
        try {
            read.load(new StringReader(Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Refusal(Problem.of("settings.unreadable", file.toString()));
        }
        Map<String, String> values = new TreeMap<>();
        read.stringPropertyNames().forEach(key -> values.put(key, read.getProperty(key)));
        return values;
    }

    /// Changes one setting; a server that runs reads it when it is started again.
    ///
    /// @return the settings as they are from now on
    /// @throws Refusal when the key is unknown or the value has no meaning; nothing is changed then
    public Settings change(String key, String value) {
        return change(Map.of(key, value));
    }

    /// The same for several settings at once: all are changed, or none.
    ///
    /// @param values by their keys; a key that the file lacks is added at its end
    public Settings change(Map<String, String> values) {
        try {
            Path tried = Files.createTempFile(file.toAbsolutePath().getParent(), ".settings-", ".tmp");
            try {
                Files.write(tried, changed(Files.readAllLines(file), values));
                Settings read = read(tried);
                Files.move(tried, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                return read;
            } finally {
                Files.deleteIfExists(tried);
            }
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("workspace.read-only", file.toString()));
        }
    }

    private static List<String> changed(List<String> before, Map<String, String> values) {
        Map<String, String> left = new TreeMap<>(values);
        List<String> lines = new ArrayList<>();
        for (String line : before) {
            Matcher setting = LINE.matcher(line);
            String key = setting.matches() ? setting.group(1) : "";
            lines.add(values.containsKey(key) ? line(key, values.getOrDefault(key, "")) : line);
            left.remove(key);
        }
        left.forEach((key, value) -> lines.add(line(key, value)));
        return lines;
    }

    /// Messages name the file that people know.
    private Settings read(Path tried) {
        try {
            return Settings.read(tried);
        } catch (Refusal refusal) {
            throw new Refusal(refusal.problem().with("file", file.toString()));
        }
    }

    /// Written so that it is read back as it is.
    private static String line(String key, String value) {
        return key + " = " + value.replace("\\", "\\\\").replaceAll("\\R", " ").strip();
    }
}
