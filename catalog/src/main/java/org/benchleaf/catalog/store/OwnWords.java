package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.OwnWord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;

/// Reads which facts and names the shop itself stated; nobody asks for it but an export.
final class OwnWords {
    private static final String FACTS = "SELECT p.plant_key, f.attribute, s.text FROM fact f"
            + " JOIN plant p ON p.serial = f.plant JOIN source s ON s.id = f.source"
            + " WHERE f.source_rank = 1 AND p.plant_key IN (<keys>)";
    private static final String NAMES = "SELECT p.plant_key, n.kind, n.language, n.text, s.text FROM plant_name n"
            + " JOIN plant p ON p.serial = n.plant JOIN source s ON s.id = n.source"
            + " WHERE n.name_rank = 1 AND p.plant_key IN (<keys>)";

    private OwnWords() {}

    private static final class Said {
        private final Set<OwnWord.Stated> facts = new HashSet<>();
        private final Set<CommonName> common = new HashSet<>();
        private final Set<Synonym> synonyms = new HashSet<>();
    }

    /// By plant; one of which nothing is the shop's own word is not among them.
    static Map<PlantKey, OwnWord> read(Session session, Collection<PlantKey> keys) throws SQLException {
        Map<PlantKey, Said> said = new HashMap<>();
        Rows.forEach(
                session,
                FACTS,
                keys,
                row -> said.computeIfAbsent(new PlantKey(row.getString(1)), key -> new Said())
                        .facts
                        .add(new OwnWord.Stated(row.getString(2), row.getString(3))));
        Rows.forEach(session, NAMES, keys, row -> {
            Said of = said.computeIfAbsent(new PlantKey(row.getString(1)), key -> new Said());
            if (row.getString(2).equals(NameShelf.COMMON)) {
                of.common.add(new CommonName(row.getString(4), Locale.forLanguageTag(row.getString(3))));
            } else {
                of.synonyms.add(new Synonym(row.getString(4), new Source(row.getString(5))));
            }
        });
        Map<PlantKey, OwnWord> words = new HashMap<>();
        said.forEach((key, of) -> words.put(key, new OwnWord(of.facts, of.common, of.synonyms)));
        return words;
    }
}
