package org.benchleaf.app;

import java.nio.file.Path;
import java.util.Locale;
import org.benchleaf.shared.Problem;

/// What can be wrong with a line of the settings.
///
/// @param file where they are read from, for messages
record SettingsTrouble(Path file) {
    /// A value without a meaning.
    ///
    /// @param accepted examples of what has one
    Refusal value(String key, String read, String accepted) {
        return new Refusal(problem("settings.value", key).with("read", read).with("accepted", accepted));
    }

    Refusal missing(String key) {
        return new Refusal(problem("settings.missing", key));
    }

    Refusal unknown(String key, String accepted) {
        return new Refusal(problem("settings.key", key).with("accepted", accepted));
    }

    /// An ink that cannot be read on white paper.
    Refusal tooPale(String key, String read, double contrast) {
        return new Refusal(problem("settings.contrast", key)
                .with("read", read)
                .with("contrast", String.format(Locale.ROOT, "%.1f", Math.floor(contrast * 10) / 10)));
    }

    private Problem problem(String problem, String key) {
        return Problem.of(problem, key).with("file", file.toString()).with("key", key);
    }
}
