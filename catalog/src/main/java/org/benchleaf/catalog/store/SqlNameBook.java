package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Names, synonyms and lots of one state, held in memory: a plan of thousands of rows asks for each of them.
final class SqlNameBook implements NameBook {
    private static final String SYNONYMS = "SELECT n.text, p.plant_key FROM plant_name n"
            + " JOIN plant p ON p.serial = n.plant WHERE n.kind = 'synonym'";
    private static final Pattern MARKS = Pattern.compile("\\p{M}|[×'\"‘’‚‛“”„]");
    private static final Pattern LONE_X = Pattern.compile("(?<=^|\\s)x(?=\\s)");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private final CatalogView view;
    private final CatalogRevision revision;
    private final Map<String, PlantKey> names = new HashMap<>();
    private final Map<String, PlantKey> synonyms = new HashMap<>();
    private final Set<String> lots;

    SqlNameBook(Session session, CatalogView view) throws SQLException {
        this.view = view;
        this.revision = State.revision(session);
        session.each(
                "SELECT name, plant_key FROM plant WHERE withdrawn = 0",
                row -> names.put(row.getString(1), new PlantKey(row.getString(2))));
        Set<String> shared = new HashSet<>();
        session.each(SYNONYMS, row -> {
            String folded = fold(row.getString(1));
            PlantKey key = new PlantKey(row.getString(2));
            PlantKey other = synonyms.putIfAbsent(folded, key);
            if (other != null && !other.equals(key)) {
                shared.add(folded);
            }
        });
        synonyms.keySet().removeAll(shared);
        this.lots = new HashSet<>(session.list("SELECT lot FROM lot WHERE withdrawn = 0", row -> row.getString(1)));
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
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
        plain = MARKS.matcher(plain).replaceAll("");
        plain = LONE_X.matcher(plain).replaceAll("");
        return BLANKS.matcher(plain).replaceAll(" ").strip();
    }
}
