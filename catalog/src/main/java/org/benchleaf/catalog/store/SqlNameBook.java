package org.benchleaf.catalog.store;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.jdbi.v3.core.Handle;

/// Names, synonyms and lots of one state, held in memory: a plan of thousands of rows asks for each of them.
final class SqlNameBook implements NameBook {
    private final CatalogView view;
    private final CatalogRevision revision;
    private final Map<String, PlantKey> names = new HashMap<>();
    private final Map<String, PlantKey> synonyms = new HashMap<>();
    private final Set<String> lots;

    SqlNameBook(Handle handle, CatalogView view) {
        this.view = view;
        this.revision = State.revision(handle);
        handle.createQuery("SELECT name, plant_key FROM plant")
                .map((row, context) -> names.put(row.getString(1), new PlantKey(row.getString(2))))
                .list();
        Set<String> shared = new HashSet<>();
        handle.createQuery("SELECT n.text, p.plant_key FROM plant_name n JOIN plant p ON p.serial = n.plant"
                        + " WHERE n.kind = 'synonym'")
                .map((row, context) -> {
                    String folded = fold(row.getString(1));
                    PlantKey key = new PlantKey(row.getString(2));
                    PlantKey other = synonyms.putIfAbsent(folded, key);
                    return other == null || other.equals(key) || shared.add(folded);
                })
                .list();
        synonyms.keySet().removeAll(shared);
        this.lots = new HashSet<>(
                handle.createQuery("SELECT lot FROM lot").mapTo(String.class).list());
    }

    @Override
    public Optional<PlantKey> byName(BotanicalName name) {
        return Optional.ofNullable(names.get(name.toString()));
    }

    @Override
    public Optional<PlantKey> bySynonym(String name) {
        return Optional.ofNullable(synonyms.get(fold(name)));
    }

    @Override
    public Optional<PlantRecord> byKey(PlantKey key) {
        return view.plant(key);
    }

    @Override
    public boolean hasLot(String lot) {
        return lots.contains(lot);
    }

    @Override
    public CatalogRevision revision() {
        return revision;
    }

    /// Lower case without accents, hybrid marks (× or a lone x) and quotes, one blank between words.
    private static String fold(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}|[×'\"‘’‚‛“”„]", "")
                .replaceAll("(?<=^|\\s)x(?=\\s)", "")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
