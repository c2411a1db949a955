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
        try {
            List<String> lines = new ArrayList<>();
            boolean found = false;
            for (String line : Files.readAllLines(file)) {
                Matcher setting = LINE.matcher(line);
                boolean asked = setting.matches() && setting.group(1).equals(key);
                found |= asked;
                lines.add(asked ? key + " = " + escaped(value) : line);
            }
            if (!found) {
                lines.add(key + " = " + escaped(value));
            }
            Path tried = Files.createTempFile(file.getParent(), ".settings-", ".tmp");
            try {
                Files.write(tried, lines);
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

    /// Messages name the file that people know.
    private Settings read(Path tried) {
        try {
            return Settings.read(tried);
        } catch (Refusal refusal) {
            throw new Refusal(refusal.problem().with("file", file.toString()));
        }
    }

    /// Written so that it is read back as it is.
    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replaceAll("\\R", " ");
    }
}
