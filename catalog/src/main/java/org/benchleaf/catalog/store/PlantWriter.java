package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.BitSet;
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
import org.benchleaf.catalog.store.PlantEdit.Standing;
import org.benchleaf.shared.fact.Source;
import org.jspecify.annotations.Nullable;

/// Writes what a plan says of plants: only rows that are different, and which plants those make different.
final class PlantWriter {
    /// The source of a synonym that was the accepted name before.
    static final Source FORMER = new Source("formerly in this catalog");

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
    private final ImportPlan.Rank rank;
    private final long revision;
    private final ChangeLog log;
    private final BitSet changed = new BitSet();
    /// Those whose cultivars have news too.
    private final BitSet factsChanged = new BitSet();
    private final BitSet touched = new BitSet();

    PlantWriter(Session session, ImportPlan plan, long revision, ChangeLog log) throws SQLException {
        this.session = session;
        this.sources = new SourceIds(session);
        this.file = new Source(plan.file());
        this.rank = plan.rank();
        this.revision = revision;
        this.log = log;
    }

    /// Writes the plants of some rows.
    void write(Collection<PlantEdit> edits) throws SQLException {
        writePlants(edits);
        List<Integer> known = edits.stream()
                .filter(edit -> edit.standing != Standing.NEW && edit.standing != Standing.MADE)
                .map(edit -> edit.serial)
                .toList();
        writeFacts(edits, known);
        writeNames(edits, known);
        edits.forEach(edit -> touched.set(edit.serial));
    }

    /// How many plants were written about.
    int touched() {
        return touched.cardinality();
    }

    /// Every plant that is different now, those that inherit from a changed one included, and those whose
    /// taxon lost the name by which they found it.
    ///
    /// @param formerNames plain names that this plan took from plants
    Set<Integer> news(Collection<String> formerNames) throws SQLException {
        Set<Integer> news = serials(changed);
        news.addAll(ChangeFeed.inheriting(session, serials(factsChanged)));
        Rows.forEach(
                session,
                "SELECT serial FROM plant WHERE taxon_name IN (<keys>)",
                formerNames,
                row -> news.add(row.getInt(1)));
        return news;
    }

    private static Set<Integer> serials(BitSet bits) {
        return bits.stream().boxed().collect(Collectors.toCollection(HashSet::new));
    }

    private void writePlants(Collection<PlantEdit> edits) throws SQLException {
        try (Batch insert = new Batch(session, PlantNaming.NEW_PLANT);
                Batch bringBack = new Batch(session, BRING_BACK)) {
            for (PlantEdit edit : edits) {
                if (edit.standing == Standing.WITHDRAWN) {
                    bringBack.add(edit.serial);
                } else if (edit.standing == Standing.NEW) {
                    @Nullable Object[] name = NameColumns.values(edit.name);
                    insert.add(PlantNaming.with(PlantNaming.with(name, edit.key), edit.serial));
                }
                if (edit.isFresh() || edit.formerName.isPresent()) {
                    changed.set(edit.serial);
                    factsChanged.set(edit.serial);
                }
            }
        }
    }

    private void writeFacts(Collection<PlantEdit> chunk, List<Integer> known) throws SQLException {
        Map<Integer, FactShelf> shelves = new HashMap<>();
        Rows.forEach(
                session,
                OLD_FACTS,
                known,
                row -> shelves.computeIfAbsent(row.getInt(1), plant -> new FactShelf(sources.weights()))
                        .put(
                                row.getString(2),
                                row.getInt(3),
                                new FactShelf.Row(
                                        row.getString(4), row.getInt(5), row.getLong(6), row.getInt(7) == 1)));
        try (Batch batch = new Batch(session, FACT)) {
            for (PlantEdit edit : chunk) {
                FactShelf shelf = shelves.computeIfAbsent(edit.serial, plant -> new FactShelf(sources.weights()));
                for (Map.Entry<Stated, Value> fact : stated(edit).entrySet()) {
                    Value value = fact.getValue();
                    shelf.state(
                            fact.getKey().attribute(), fact.getKey().source(), value.text(), value.rank(), revision);
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
                    changed.set(edit.serial);
                    factsChanged.set(edit.serial);
                }
            }
        }
    }

    private record Stated(String attribute, int source) {}

    private record Value(String text, int rank) {}

    /// As it is stored: 0 a reference work, 1 the shop's own.
    private int rank(PlantDraft draft) {
        return draft.rank().orElse(rank) == ImportPlan.Rank.OWN ? 1 : 0;
    }

    /// Of two rows in which one source states an attribute of one plant the later one counts.
    private Map<Stated, Value> stated(PlantEdit edit) throws SQLException {
        Map<Stated, Value> stated = new LinkedHashMap<>();
        for (PlantDraft draft : edit.drafts) {
            for (Fact<?> fact : draft.facts()) {
                Stated place = new Stated(fact.attribute().id(), sources.of(fact.source()));
                stated.remove(place);
                stated.put(place, new Value(plain(fact.text()), rank(draft)));
            }
        }
        return stated;
    }

    /// Control characters have no meaning in a fact, and readers use two of them as separators.
    private static String plain(String value) {
        return value.replace(FactReader.BETWEEN_FACTS, ' ').replace(FactReader.BETWEEN_PARTS, ' ');
    }

    private void writeNames(Collection<PlantEdit> chunk, List<Integer> known) throws SQLException {
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
                    changed.set(edit.serial);
                    log.add(RowChange.name(edit.serial, id, shelf.before(id), Optional.empty()));
                }
                for (Map.Entry<NameShelf.Id, NameShelf.Row> entry :
                        shelf.changed().entrySet()) {
                    NameShelf.Id id = entry.getKey();
                    NameShelf.Row row = entry.getValue();
                    write.add(edit.serial, id.kind(), id.language(), id.text(), id.source(), row.rank(), row.place());
                    changed.set(edit.serial);
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
                shelf.stateCommon(names.getKey(), names.getValue(), rank(draft), sources.of(file));
            }
            Map<Source, List<String>> synonyms = draft.synonyms().stream()
                    .collect(Collectors.groupingBy(
                            Synonym::source,
                            LinkedHashMap::new,
                            Collectors.mapping(Synonym::text, Collectors.toList())));
            for (Map.Entry<Source, List<String>> names : synonyms.entrySet()) {
                shelf.stateSynonyms(sources.of(names.getKey()), names.getValue(), rank(draft));
            }
        }
        if (edit.formerName.isPresent()) {
            shelf.keepFormer(edit.formerName.get(), sources.of(FORMER));
        }
        shelf.dropSynonym(edit.name.toString());
    }
}
