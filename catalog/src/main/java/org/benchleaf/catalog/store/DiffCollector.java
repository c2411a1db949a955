package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.ImportDiff.Difference;
import org.benchleaf.catalog.ImportDiff.Entry;
import org.benchleaf.catalog.ImportDiff.Subject;
import org.jspecify.annotations.Nullable;

/// Gathers what a rehearsed import changes into a diff; counts everything, keeps the details of the first.
final class DiffCollector implements ChangeLog {
    private static final List<String> LOT_FIELDS =
            List.of("size", "place", "ready_week", "count", "condition", "seen_on");
    private static final List<String> ITEM_FIELDS = List.of("gtin", "price");

    private final int most;
    private final BitSet newPlants = new BitSet();
    private final BitSet changedPlants = new BitSet();
    private int newLots;
    private int changedLots;
    private int kept;
    private final Map<Integer, List<RowChange>> ofPlants = new TreeMap<>();
    private final List<RowChange> ofStock = new ArrayList<>();

    /// @param most how many changed rows are told
    DiffCollector(int most) {
        this.most = most;
    }

    @Override
    public void add(RowChange change) {
        switch (change.thing()) {
            case PLANT -> newPlants.set(change.plant());
            case RENAME, FACT, NAME -> changedPlants.set(change.plant());
            case LOT -> {
                newLots += change.before().isEmpty() ? 1 : 0;
                changedLots += change.before().isEmpty() ? 0 : 1;
            }
            case ITEM -> {}
        }
        if (kept < most) {
            kept++;
            boolean stock = change.thing() == RowChange.Thing.LOT || change.thing() == RowChange.Thing.ITEM;
            (stock ? ofStock : ofPlants.computeIfAbsent(change.plant(), plant -> new ArrayList<>())).add(change);
        }
    }

    /// Puts the diff together; asks the rehearsed state for names.
    ImportDiff diff(Session session, PlanApplier.Written written) throws SQLException {
        Map<Integer, String> names = new HashMap<>();
        Set<Integer> serials = new HashSet<>(ofPlants.keySet());
        ofStock.forEach(change -> serials.add(change.plant()));
        Rows.forEach(
                session,
                "SELECT serial, name FROM plant WHERE serial IN (<keys>)",
                serials,
                row -> names.put(row.getInt(1), row.getString(2)));
        Map<Integer, String> sources = new HashMap<>();
        session.each("SELECT id, text FROM source", row -> sources.put(row.getInt(1), row.getString(2)));
        Map<String, String> sizes = new HashMap<>();
        Rows.forEach(
                session,
                "SELECT plant, number, size, form FROM item WHERE plant IN (<keys>)",
                serials,
                row -> sizes.put(row.getInt(1) + "/" + row.getInt(2), size(row.getString(3), row.getString(4))));
        List<Entry> entries = new ArrayList<>();
        ofPlants.forEach((serial, changes) -> {
            String name = names.getOrDefault(serial, "");
            boolean isNew = newPlants.get(serial);
            entries.add(new Entry(Subject.PLANT, isNew, name, name, isNew ? List.of() : differences(changes, sources)));
        });
        for (RowChange change : ofStock) {
            String name = names.getOrDefault(change.plant(), "");
            boolean lot = change.thing() == RowChange.Thing.LOT;
            if (!lot && change.before().isEmpty()) {
                continue; // a new item is told by its lot
            }
            List<Difference> differences = columns(
                    change,
                    lot ? LOT_FIELDS : ITEM_FIELDS,
                    text -> sizes.getOrDefault(change.plant() + "/" + text, text));
            String title = lot ? change.id().get(0) : change.id().get(1);
            entries.add(
                    new Entry(lot ? Subject.LOT : Subject.ITEM, change.before().isEmpty(), title, name, differences));
        }
        entries.sort(Comparator.comparing(Entry::plant).thenComparing(Entry::subject));
        changedPlants.andNot(newPlants);
        int changed = changedPlants.cardinality();
        int added = newPlants.cardinality();
        return new ImportDiff(
                added,
                changed,
                Math.max(0, written.plants() - added - changed),
                newLots,
                changedLots,
                Math.max(0, written.lots() - newLots - changedLots),
                entries);
    }

    private static String size(String size, String form) {
        return form.equals("regular") ? size : size + ", " + form;
    }

    private static List<Difference> differences(List<RowChange> changes, Map<Integer, String> sources) {
        List<Difference> differences = new ArrayList<>();
        Map<String, List<RowChange>> facts = new LinkedHashMap<>();
        for (RowChange change : changes) {
            switch (change.thing()) {
                case RENAME ->
                    differences.add(
                            new Difference("name", column(change.before(), 0), column(change.after(), 0), "", true));
                case FACT ->
                    facts.computeIfAbsent(change.id().get(0), id -> new ArrayList<>())
                            .add(change);
                case NAME -> name(change, sources).ifPresent(differences::add);
                default -> {}
            }
        }
        facts.forEach((attribute, rows) -> differences.addAll(facts(attribute, rows, sources)));
        return differences;
    }

    /// A name that only moved up or down among others is not told.
    private static Optional<Difference> name(RowChange change, Map<Integer, String> sources) {
        if (change.before().isPresent() && change.after().isPresent()) {
            return Optional.empty();
        }
        String kind = change.id().get(0).equals(NameShelf.SYNONYM) ? "synonyms" : "common_names";
        Optional<String> text = Optional.of(change.id().get(2));
        return Optional.of(new Difference(
                kind,
                change.before().isPresent() ? text : Optional.empty(),
                change.after().isPresent() ? text : Optional.empty(),
                sources.getOrDefault(Integer.parseInt(change.id().get(3)), ""),
                true));
    }

    /// The rows of one attribute: what was shown before and is so no longer is what the new one takes the
    /// place of.
    private static List<Difference> facts(String attribute, List<RowChange> rows, Map<Integer, String> sources) {
        Optional<String> shownBefore = rows.stream()
                .filter(row -> row.before().isPresent()
                        && "1".equals(row.before().get().get(3)))
                .findFirst()
                .flatMap(row -> column(row.before(), 0));
        List<Difference> differences = new ArrayList<>();
        for (RowChange row : rows) {
            Optional<String> before = column(row.before(), 0);
            Optional<String> after = column(row.after(), 0);
            boolean shown = "1".equals(row.after().orElseThrow().get(3));
            if (before.equals(after) && !shown) {
                continue; // told by the one that takes its place
            }
            differences.add(new Difference(
                    attribute,
                    before.isPresent() || !shown ? before : shownBefore,
                    after,
                    sources.getOrDefault(Integer.parseInt(row.id().get(1)), ""),
                    shown));
        }
        return differences;
    }

    private static List<Difference> columns(
            RowChange change, List<String> fields, java.util.function.UnaryOperator<String> size) {
        List<Difference> differences = new ArrayList<>();
        for (int at = 0; at < fields.size(); at++) {
            Optional<String> before = column(change.before(), at);
            Optional<String> after = column(change.after(), at);
            if (!before.equals(after)) {
                boolean item = fields.get(at).equals("size");
                differences.add(new Difference(
                        fields.get(at), item ? before.map(size) : before, item ? after.map(size) : after, "", true));
            }
        }
        return differences;
    }

    private static Optional<String> column(Optional<List<@Nullable String>> columns, int at) {
        return columns.flatMap(row -> Optional.ofNullable(row.get(at))).filter(text -> !text.isEmpty());
    }
}
