package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.shared.fact.Source;

/// What the columns of a kind of file mean: worked out once, saved, used for every such file.
///
/// Read one from a file with [MapFile], take one that comes with the program from [ColumnMaps], or have one
/// proposed for unknown headings by [MapProposal].
///
/// @param id its short name: `own-plants`
/// @param rows what the rows are
/// @param rank how much the facts count beside those of other sources
/// @param source who states the facts, unless a row names its own source
/// @param columns the columns; headings of the file that none names are findings
/// @param passedOver headings that are known and not used
public record ColumnMap(
        String id,
        RowKind rows,
        ImportPlan.Rank rank,
        Optional<Source> source,
        List<Column> columns,
        Set<String> passedOver) {
    public ColumnMap {
        columns = List.copyOf(columns);
        passedOver = Set.copyOf(passedOver);
    }

    /// The same map for facts of another source.
    public ColumnMap withSource(Source other) {
        return new ColumnMap(id, rows, rank, Optional.of(other), columns, passedOver);
    }

    /// Every heading it knows, as it writes them.
    public Set<String> headings() {
        Set<String> known =
                columns.stream().flatMap(column -> column.headings().stream()).collect(Collectors.toSet());
        known.addAll(passedOver);
        columns.forEach(column -> column.cases().forEach(each -> {
            known.addAll(each.when().keySet());
            known.addAll(each.unless().keySet());
        }));
        return known;
    }
}
