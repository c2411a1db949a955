package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// How one field of the catalog is taken from a file.
///
/// @param headings the headings it is taken from; the first one is the place that findings name
/// @param field an attribute's id, or one of the fields in [Fields]
/// @param required whether a file without these headings is refused
/// @param unit what bare numbers are: `ft`, `in`, `m`, `cm` for lengths, `lowest F` for hardiness
/// @param language of common names
/// @param join text put between the cells of several headings, as `-` between a lowest and a highest pH
/// @param words what the file's words are in the catalog's; an empty text means that the word says nothing.
///     Case does not matter
/// @param cases values by conditions, instead of the cell itself
/// @param everyCase whether all cases that hold count, not the first alone
/// @param approximation what a person should know once a file: how exact the translation is; may be empty
public record Column(
        List<String> headings,
        String field,
        boolean required,
        Optional<String> unit,
        Locale language,
        String join,
        Map<String, String> words,
        List<ColumnCase> cases,
        boolean everyCase,
        String approximation) {
    public Column {
        headings = List.copyOf(headings);
        words = Map.copyOf(words);
        cases = List.copyOf(cases);
        if (headings.isEmpty()) {
            throw new IllegalArgumentException("a column has at least one heading; field " + field);
        }
    }

    /// A column that holds the field as the catalog writes it.
    public static Column of(String heading, String field) {
        return new Column(
                List.of(heading), field, false, Optional.empty(), Locale.ENGLISH, "", Map.of(), List.of(), false, "");
    }

    /// The same for bare numbers of a unit.
    public Column withUnit(String unitOfCells) {
        return new Column(
                headings,
                field,
                required,
                Optional.of(unitOfCells),
                language,
                join,
                words,
                cases,
                everyCase,
                approximation);
    }

    /// The heading that findings name.
    String heading() {
        return headings.get(0);
    }
}
