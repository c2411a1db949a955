package org.benchleaf.app.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/// The commands below another one, made only when they are wanted: a start that asks for one of them does not pay
/// for reading the options of all.
final class Commands {
    private final Map<String, Supplier<Object>> made = new LinkedHashMap<>();

    /// @param name as its command says it is called
    /// @param command makes it: an object with picocli's annotations, or a command line
    Commands with(String name, Supplier<Object> command) {
        if (made.put(name, command) != null) {
            throw new IllegalArgumentException("two commands are called " + name);
        }
        return this;
    }

    /// Adds the command that the words begin with; all of them when the words begin with none.
    void addTo(CommandLine parent, String[] words) {
        Supplier<Object> asked = words.length == 0 ? null : made.get(words[0]);
        if (asked != null) {
            parent.addSubcommand(asked.get());
        } else {
            made.values().forEach(command -> parent.addSubcommand(command.get()));
        }
    }

    /// What follows the first word, for the commands below that one.
    static String[] rest(String[] words) {
        return words.length == 0 ? words : java.util.Arrays.copyOfRange(words, 1, words.length);
    }
}
