package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/// A value that holds when cells of the row hold certain words: growth habit Tree and family Pinaceae make a
/// conifer.
///
/// A cell may hold several words parted by commas or semicolons; case does not matter.
///
/// @param when headings, each with the words of which the cell must hold one
/// @param unless headings, each with the words of which the cell must hold none
/// @param value the value in the catalog's words; empty when nothing is then known
public record ColumnCase(Map<String, List<String>> when, Map<String, List<String>> unless, String value) {
    private static final Pattern PART = Pattern.compile("[,;]");

    public ColumnCase {
        when = Map.copyOf(when);
        unless = Map.copyOf(unless);
    }

    /// @param cell the text under a heading
    boolean holds(Function<String, String> cell) {
        return when.entrySet().stream().allMatch(entry -> meets(cell.apply(entry.getKey()), entry.getValue()))
                && unless.entrySet().stream().noneMatch(entry -> meets(cell.apply(entry.getKey()), entry.getValue()));
    }

    private static boolean meets(String cell, List<String> words) {
        return PART.splitAsStream(cell)
                .map(String::strip)
                .anyMatch(stated -> words.stream().anyMatch(stated::equalsIgnoreCase));
    }
}
