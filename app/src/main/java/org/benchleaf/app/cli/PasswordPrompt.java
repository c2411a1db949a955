package org.benchleaf.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.benchleaf.app.Refusal;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;

/// Asks for a password where a person types, without showing it; else takes the first line of the
/// standard input. Never an argument: other users of the machine see those.
final class PasswordPrompt {
    private final Wording wording;

    PasswordPrompt(Wording wording) {
        this.wording = wording;
    }

    /// @throws Refusal when none was given, or it was typed differently the second time
    char[] ask(String name) {
        java.io.Console terminal = System.console();
        char[] password = terminal == null ? line() : typed(terminal, name);
        if (password.length == 0) {
            throw new Refusal(Problem.of("staff.password.missing", name));
        }
        return password;
    }

    private char[] typed(java.io.Console terminal, String name) {
        char[] once = terminal.readPassword("%s ", wording.text("staff.ask", Map.of("name", name)));
        char[] again = terminal.readPassword("%s ", wording.text("staff.ask.again"));
        if (once == null) {
            return new char[0];
        }
        if (!Arrays.equals(once, again)) {
            throw new Refusal(Problem.of("staff.password.differs", name));
        }
        return once;
    }

    private static char[] line() {
        try {
            String line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
            return line == null ? new char[0] : line.toCharArray();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
