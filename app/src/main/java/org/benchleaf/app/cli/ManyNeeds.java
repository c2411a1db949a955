package org.benchleaf.app.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Option;

/// One need or a file of them, and the form the answers are wanted in.
final class ManyNeeds {
    @Option(names = "--json", description = "for machines; with --batch one answer a line")
    private boolean json;

    @Option(names = "--csv", description = "for a spreadsheet")
    private boolean csv;

    @Option(
            names = "--batch",
            paramLabel = "FILE",
            description = "answer every line of a file as a need of its own; options hold for all of them")
    private Optional<Path> batch = Optional.empty();

    boolean json() {
        return json;
    }

    boolean csv() {
        return csv;
    }

    boolean batch() {
        return batch.isPresent();
    }

    /// The needs: the lines of the file, or the words.
    List<String> sentences(List<String> words) {
        return batch.map(ManyNeeds::lines).orElseGet(() -> List.of(String.join(" ", words)));
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.isBlank())
                    .toList();
        } catch (IOException unreadable) {
            throw new Refusal(Problem.of("batch.unreadable", file.toString()));
        }
    }
}
