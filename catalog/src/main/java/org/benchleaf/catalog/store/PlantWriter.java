package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.fact.Source;
import org.jspecify.annotations.Nullable;

/// Writes what a plan says of plants: only rows that are different, and which plants those make different.
final class PlantWriter {
    /// The source of a synonym that was the accepted name before.
    static final Source FORMER = new Source("formerly in this catalog");

    /// Plants whose rows are compared in memory at a time.
    private static final int CHUNK = 1000;

    private static final String NEW_PLANT = "INSERT INTO plant (" + String.join(", ", NameColumns.COLUMNS)
            + ", plant_key, serial) VALUES (" + "?, ".repeat(NameColumns.COLUMNS.size()) + "?, ?)";
    private static final String RENAME = "UPDATE plant SET "
            + NameColumns.COLUMNS.stream().map(column -> column + " = ?").collect(Collectors.joining(", "))
            + " WHERE serial = ?";
    /// Two plants may take each other's name; no plant's name is a key.
    private static final String SET_ASIDE = "UPDATE plant SET name = plant_key WHERE serial = ?";

    private static final String OLD_FACTS = "SELECT plant, attribute, source, value, source_rank, entered, chosen"
            + " FROM fact WHERE plant IN (<keys>)";
    private static final String FACT = "INSERT INTO fact"
            + " (plant, attribute, source, value, source_rank, entered, chosen) VALUES (?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (plant, attribute, source) DO UPDATE SET value = excluded.value,"
            + " source_rank = excluded.source_rank, entered = excluded.entered, chosen = excluded.chosen";

    private static final String OLD_NAMES =
            "SELECT plant, kind, language, text, source, name_rank, place" + " FROM plant_name WHERE plant IN (<keys>)";
    private static final String NAME = "INSERT INTO plant_name"
            + " (plant, kind, language, text, source, name_rank, place) VALUES (?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (plant, kind, language, text, source) DO UPDATE SET name_rank = excluded.name_rank,"
            + " place = excluded.place";
    private static final String NO_NAME =
            "DELETE FROM plant_name" + " WHERE plant = ? AND kind = ? AND language = ? AND text = ? AND source = ?";

    private static final String BRING_BACK = "UPDATE plant SET withdrawn = 0 WHERE serial = ?";

    private final Session session;
    private final SourceIds sources;
    private final Source file;
    private final int rank;
    private final long revision;
    private final ChangeLog log;
    private final Set<Integer> changed = new HashSet<>();
    /// Those whose cultivars have news too.
    private final Set<Integer> factsChanged = new HashSet<>();

    PlantWriter(Session session, ImportPlan plan, long revision, ChangeLog log) throws SQLException {
        this.session = session;
        this.sources = new SourceIds(session);
        this.file = new Source(plan.file());
        this.rank = plan.rank() == ImportPlan.Rank.OWN ? 1 : 0;
        this.revision = revision;
        this.log = log;
    }

    /// Writes the plants' rows.
    ///
    /// @return every plant that is different now, those that inherit from a changed one included
    Set<Integer> write(Collection<PlantEdit> edits) throws SQLException {
        Set<String> formerNames =
                edits.stream().flatMap(edit -> edit.formerName().stream()).collect(Collectors.toSet());
        writePlants(edits);
        List<PlantEdit> all = new ArrayList<>(edits);
        for (int from = 0; from < all.size(); from += CHUNK) {
            List<PlantEdit> chunk = all.subList(from, Math.min(all.size(), from + CHUNK));
            List<Integer> known = chunk.stream()
                    .filter(edit -> !edit.isNew())
                    .map(edit -> edit.serial)
                    .toList();
            writeFacts(chunk, known);
            writeNames(chunk, known);
        }
        Set<Integer> news = new HashSet<>(changed);
        news.addAll(ChangeFeed.inheriting(session, factsChanged));
        // a cultivar of a name that no plant has any longer has lost its taxon
        Rows.forEach(
                session,
                "SELECT serial FROM plant WHERE taxon_name IN (<keys>)",
                formerNames,
                row -> news.add(row.getInt(1)));
        return news;
    }

    private void writePlants(Collection<PlantEdit> edits) throws SQLException {
        try (Batch aside = new Batch(session, SET_ASIDE)) {
            for (PlantEdit edit : edits) {
                if (edit.formerName().isPresent()) {
                    aside.add(edit.serial);
                }
            }
        }
        try (Batch insert = new Batch(session, NEW_PLANT);
                Batch rename = new Batch(session, RENAME);
                Batch bringBack = new Batch(session, BRING_BACK)) {
            for (PlantEdit edit : edits) {
                if (edit.withdrawn) {
                    bringBack.add(edit.serial);
                    changed.add(edit.serial);
                    factsChanged.add(edit.serial);
                }
                if (!edit.named()) {
                    continue;
                }
                @Nullable Object[] name = NameColumns.values(edit.name);
                if (edit.isNew()) {
                    insert.add(with(with(name, edit.key), edit.serial));
                } else {
                    rename.add(with(name, edit.serial));
                    log.add(RowChange.renamed(edit));
                }
                changed.add(edit.serial);
                factsChanged.add(edit.serial);
            }
        }
    }

    private static @Nullable Object[] with(@Nullable Object[] values, Object last) {
        @Nullable Object[] more = Arrays.copyOf(values, values.length + 1);
        more[values.length] = last;
        return more;
    }

    private void writeFacts(List<PlantEdit> chunk, List<Integer> known) throws SQLException {
        Map<Integer, FactShelf> shelves = new HashMap<>();
        Rows.forEach(
                session,
                OLD_FACTS,
                known,
                row -> shelves.computeIfAbsent(row.getInt(1), plant -> new FactShelf())
                        .put(
                                row.getString(2),
                                row.getInt(3),
                                new FactShelf.Row(
                                        row.getString(4), row.getInt(5), row.getLong(6), row.getInt(7) == 1)));
        try (Batch batch = new Batch(session, FACT)) {
            for (PlantEdit edit : chunk) {
                FactShelf shelf = shelves.computeIfAbsent(edit.serial, plant -> new FactShelf());
                for (Map.Entry<Stated, String> fact : stated(edit).entrySet()) {
                    shelf.state(fact.getKey().attribute(), fact.getKey().source(), fact.getValue(), rank, revision);
                }
                for (FactShelf.Changed fact : shelf.changed()) {
                    FactShelf.Row row = fact.row();
                    batch.add(
                            edit.serial,
                            fact.attribute(),
                            fact.source(),
                            row.value(),
                            row.rank(),
                            row.entered(),
                            row.chosen() ? 1 : 0);
                    if (!edit.isFresh()) {
                        log.add(RowChange.fact(edit.serial, fact, shelf.before(fact.attribute(), fact.source())));
                    }
                    changed.add(edit.serial);
                    factsChanged.add(edit.serial);
                }
            }
        }
    }

    private record Stated(String attribute, int source) {}

    /// Of two rows in which one source states an attribute of one plant the later one counts.
    private Map<Stated, String> stated(PlantEdit edit) throws SQLException {
        Map<Stated, String> stated = new LinkedHashMap<>();
        for (PlantDraft draft : edit.drafts) {
            for (Fact<?> fact : draft.facts()) {
                Stated place = new Stated(fact.attribute().id(), sources.of(fact.source()));
                stated.remove(place);
                stated.put(place, plain(fact.text()));
            }
        }
        return stated;
    }

    /// Control characters have no meaning in a fact, and readers use two of them as separators.
    private static String plain(String value) {
        return value.replace(FactReader.BETWEEN_FACTS, ' ').replace(FactReader.BETWEEN_PARTS, ' ');
    }

    private void writeNames(List<PlantEdit> chunk, List<Integer> known) throws SQLException {
        Map<Integer, NameShelf> shelves = new HashMap<>();
        Rows.forEach(
                session,
                OLD_NAMES,
                known,
                row -> shelves.computeIfAbsent(row.getInt(1), plant -> new NameShelf())
                        .put(
                                new NameShelf.Id(row.getString(2), row.getString(3), row.getString(4), row.getInt(5)),
                                new NameShelf.Row(row.getInt(6), row.getInt(7))));
        try (Batch remove = new Batch(session, NO_NAME);
                Batch write = new Batch(session, NAME)) {
            for (PlantEdit edit : chunk) {
                NameShelf shelf = shelves.computeIfAbsent(edit.serial, plant -> new NameShelf());
                stateNames(edit, shelf);
                for (NameShelf.Id id : shelf.removed()) {
                    remove.add(edit.serial, id.kind(), id.language(), id.text(), id.source());
                    changed.add(edit.serial);
                    log.add(RowChange.name(edit.serial, id, shelf.before(id), Optional.empty()));
                }
                for (Map.Entry<NameShelf.Id, NameShelf.Row> entry :
                        shelf.changed().entrySet()) {
                    NameShelf.Id id = entry.getKey();
                    NameShelf.Row row = entry.getValue();
                    write.add(edit.serial, id.kind(), id.language(), id.text(), id.source(), row.rank(), row.place());
                    changed.add(edit.serial);
                    if (!edit.isFresh()) {
                        log.add(RowChange.name(edit.serial, id, shelf.before(id), Optional.of(row)));
                    }
                }
                if (edit.isFresh()) {
                    log.add(RowChange.plant(edit, shelf.size()));
                }
            }
        }
    }

    private void stateNames(PlantEdit edit, NameShelf shelf) throws SQLException {
        for (PlantDraft draft : edit.drafts) {
            Map<String, List<String>> common = draft.commonNames().stream()
                    .collect(Collectors.groupingBy(
                            name -> name.language().toLanguageTag(),
                            LinkedHashMap::new,
                            Collectors.mapping(CommonName::text, Collectors.toList())));
            for (Map.Entry<String, List<String>> names : common.entrySet()) {
                shelf.stateCommon(names.getKey(), names.getValue(), rank, sources.of(file));
            }
            Map<Source, List<String>> synonyms = draft.synonyms().stream()
                    .collect(Collectors.groupingBy(
                            Synonym::source,
                            LinkedHashMap::new,
                            Collectors.mapping(Synonym::text, Collectors.toList())));
            for (Map.Entry<Source, List<String>> names : synonyms.entrySet()) {
                shelf.stateSynonyms(sources.of(names.getKey()), names.getValue(), rank);
            }
        }
        if (edit.formerName().isPresent()) {
            shelf.keepFormer(edit.formerName().get(), sources.of(FORMER));
        }
        shelf.dropSynonym(edit.name.toString());
    }
}
