package org.benchleaf.bench.eval;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// A small comma separated table with headings, cells in quotes where they hold commas.
final class Table {
    private Table() {}

    /// The rows of a file beside the benchmarks.
    static List<Map<String, String>> read(String file) {
        try (InputStream stream =
                        Objects.requireNonNull(Table.class.getResourceAsStream("/org/benchleaf/bench/" + file));
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return rows(lines);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<Map<String, String>> rows(BufferedReader lines) throws IOException {
        List<String> headings = cells(Objects.requireNonNull(lines.readLine()));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            List<String> cells = cells(line);
            Map<String, String> row = new LinkedHashMap<>();
            for (int at = 0; at < headings.size(); at++) {
                row.put(headings.get(at), at < cells.size() ? cells.get(at) : "");
            }
            rows.add(row);
        }
        return rows;
    }

    /// The rows of a file anywhere.
    static List<Map<String, String>> read(Path file) throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            return rows(lines);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
