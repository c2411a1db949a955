package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;

/// Turns the rows of one file into drafts of plants, one after the other; remembers which plants it has seen.
final class PlantRows {
    private final ColumnMap map;
    private final MappedHeadings headings;
    private final NameBook book;
    private final NameCells names;
    private final TextNumbers rowByName = new TextNumbers();
    private final TextNumbers rowByKey = new TextNumbers();
    private final Set<Column> toldApproximation = new HashSet<>();

    PlantRows(ColumnMap map, MappedHeadings headings, NameBook book) {
        this.map = map;
        this.headings = headings;
        this.book = book;
        this.names = new NameCells(book);
    }

    /// The plant that a row describes; empty when the row is left out.
    Optional<PlantDraft> draft(RawRow row, RowNotes notes) {
        String nameHeading = headings.heading(Fields.NAME);
        Optional<BotanicalName> read = names.name(headings.field(row, Fields.NAME), nameHeading, notes);
        Optional<PlantKey> key = names.key(headings.field(row, Fields.KEY), headings.heading(Fields.KEY), notes);
        if (read.isEmpty() || notes.isLeftOut()) {
            return Optional.empty();
        }
        BotanicalName name = read.get();
        Optional<PlantRecord> plant =
                key.isPresent() ? byKey(key.get(), name, nameHeading, notes) : names.plant(name, nameHeading, notes);
        BotanicalName accepted =
                key.isPresent() ? name : plant.map(PlantRecord::name).orElse(name);
        Optional<PlantKey> identity =
                key.or(() -> plant.filter(known -> !known.name().equals(name)).map(PlantRecord::key));
        FactSources sources = sources(row, notes);
        Optional<ImportPlan.Rank> rank = rank(row, notes);
        String said = String.join(
                "\u001f",
                headings.field(row, Fields.SOURCE),
                headings.field(row, Fields.FACT_SOURCES),
                rank.map(ImportPlan.Rank::name).orElse(""));
        if (isRepeated(accepted, said, key, nameHeading, notes) || notes.isLeftOut()) {
            return Optional.empty();
        }
        List<Fact<?>> facts = facts(row, accepted, plant, sources, notes);
        return Optional.of(new PlantDraft(
                notes.place(), identity, accepted, commonNames(row), synonyms(row, sources.usual()), facts, rank));
    }

    /// A key says which plant it is; another name then renames it, unless that name is another plant's.
    private Optional<PlantRecord> byKey(PlantKey key, BotanicalName name, String heading, RowNotes notes) {
        Optional<PlantRecord> plant = book.byKey(key);
        Optional<PlantKey> owner = book.byName(name).filter(other -> !other.equals(key));
        if (owner.isPresent()) {
            notes.rowLeftOut(
                    heading,
                    Problem.of("name.taken", name.toString())
                            .with("key", key.text())
                            .with("owner", owner.get().text()));
        } else if (plant.filter(known -> !known.name().equals(name)).isPresent()) {
            notes.kept(
                    heading,
                    Problem.of("name.renamed", name.toString())
                            .with("before", plant.get().name().toString()));
        }
        return plant;
    }

    /// A plant has one row for each source.
    ///
    /// @param said the sources that the row names
    private boolean isRepeated(
            BotanicalName name, String said, Optional<PlantKey> key, String heading, RowNotes notes) {
        OptionalLong first = rowByName.putIfAbsent(name + "\u001f" + said, notes.row());
        if (first.isPresent() && map.rows().areStock()) {
            return true; // another lot of it: what the first row says of the plant counts
        }
        if (first.isPresent()) {
            notes.rowLeftOut(
                    heading,
                    Problem.of("row.same-name", name.toString()).with("row", Long.toString(first.getAsLong())));
            return true;
        }
        OptionalLong firstOfKey = OptionalLong.empty();
        if (key.isPresent()) {
            String text = key.get().text();
            OptionalLong before = rowByKey.putIfAbsent(text, notes.row());
            boolean sameName =
                    rowByKey.putIfAbsent(text + '\u001f' + name, notes.row()).isPresent();
            firstOfKey = sameName ? OptionalLong.empty() : before;
        }
        firstOfKey.ifPresent(row -> notes.rowLeftOut(
                headings.heading(Fields.KEY),
                Problem.of("row.same-key", key.map(PlantKey::text).orElse("")).with("row", Long.toString(row))));
        return firstOfKey.isPresent();
    }

    private FactSources sources(RawRow row, RowNotes notes) {
        String stated = headings.field(row, Fields.SOURCE);
        Source usual = stated.isEmpty() ? map.source().orElseGet(() -> new Source(map.id())) : new Source(stated);
        return new FactSources(
                usual, headings.field(row, Fields.FACT_SOURCES), headings.heading(Fields.FACT_SOURCES), notes);
    }

    private Optional<ImportPlan.Rank> rank(RawRow row, RowNotes notes) {
        String word = headings.field(row, Fields.RANK).toUpperCase(Locale.ROOT);
        Optional<ImportPlan.Rank> rank = Arrays.stream(ImportPlan.Rank.values())
                .filter(each -> each.name().equals(word))
                .findFirst();
        if (rank.isEmpty() && !word.isEmpty()) {
            notes.cellLeftOut(
                    headings.heading(Fields.RANK), Problem.of("rank.unknown", headings.field(row, Fields.RANK)));
        }
        return rank;
    }

    private List<Fact<?>> facts(
            RawRow row, BotanicalName name, Optional<PlantRecord> plant, FactSources sources, RowNotes notes) {
        Map<String, Column> columnOf = new HashMap<>();
        List<Fact<?>> facts = new ArrayList<>();
        for (Column column : headings.columns()) {
            Optional<Attribute<?>> attribute = Attributes.byId(column.field());
            if (attribute.isEmpty()) {
                continue;
            }
            CellText text = CellTexts.of(column, heading -> headings.cell(row, heading));
            Optional<Fact<?>> fact = FactCells.fact(attribute.get(), column, text, sources.of(column.field()), notes);
            if (fact.isPresent() && columnOf.putIfAbsent(column.field(), column) != null) {
                notes.cellLeftOut(
                        column.heading(),
                        Problem.of("cell.twice", fact.get().text()).with("attribute", column.field()));
            } else if (fact.isPresent()) {
                facts.add(fact.get());
                tellApproximation(column, notes);
            }
        }
        List<Doubt> doubts = new ArrayList<>(Plausibility.doubts(name, Facts.of(facts)));
        plant.ifPresent(known -> doubts.addAll(Conflicts.with(known, facts)));
        for (Doubt doubt : doubts) {
            String heading = Optional.ofNullable(columnOf.get(doubt.attribute().id()))
                    .map(Column::heading)
                    .orElse(doubt.attribute().id());
            if (doubt.contradicts() && map.rank() == ImportPlan.Rank.REFERENCE) {
                notes.cellLeftOut(heading, doubt.problem());
                facts.removeIf(fact -> fact.attribute().equals(doubt.attribute()));
            } else {
                // The shop's own word stands; it is told, not overruled
                notes.kept(heading, doubt.problem());
            }
        }
        return facts;
    }

    /// How exact a translation is, told at the first row that uses it.
    private void tellApproximation(Column column, RowNotes notes) {
        if (!column.approximation().isEmpty() && toldApproximation.add(column)) {
            notes.kept(
                    column.heading(),
                    Problem.of("column.approximate", column.heading()).with("note", column.approximation()));
        }
    }

    private List<CommonName> commonNames(RawRow row) {
        return headings.columns().stream()
                .filter(column -> column.field().equals(Fields.COMMON_NAMES))
                .flatMap(column -> pieces(headings.cell(row, column.heading())).stream()
                        .map(text -> new CommonName(text, column.language())))
                .toList();
    }

    private List<Synonym> synonyms(RawRow row, Source source) {
        return pieces(headings.field(row, Fields.SYNONYMS)).stream()
                .map(text -> new Synonym(text, source))
                .toList();
    }

    private static List<String> pieces(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .distinct()
                .toList();
    }
}
