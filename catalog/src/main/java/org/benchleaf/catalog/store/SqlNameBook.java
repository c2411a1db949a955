package org.benchleaf.catalog.store;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.intake.TextNumbers;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Names, synonyms and lots of one state, held in memory as numbers: a plan of many thousand rows asks
/// for each.
final class SqlNameBook implements NameBook {
    private static final String SYNONYMS = "SELECT n.text, p.plant_key FROM plant_name n"
            + " JOIN plant p ON p.serial = n.plant WHERE n.kind = 'synonym'";
    private static final Pattern MARKS = Pattern.compile("\\p{M}|[×'\"‘’‚‛“”„]");
    private static final Pattern LONE_X = Pattern.compile("(?<=^|\\s)x(?=\\s)");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    /// Stands for a synonym that several plants share; no key packs to it.
    private static final long SHARED = 0;

    private final CatalogView view;
    private final CatalogRevision revision;
    private final TextNumbers names = new TextNumbers();
    private final TextNumbers synonyms = new TextNumbers();
    private final TextNumbers lots = new TextNumbers();

    SqlNameBook(Session session, CatalogView view) throws SQLException {
        this.view = view;
        this.revision = State.revision(session);
        session.each(
                "SELECT name, plant_key FROM plant WHERE withdrawn = 0",
                row -> names.put(row.getString(1), packed(row.getString(2))));
        session.each(SYNONYMS, row -> {
            String folded = fold(row.getString(1));
            long key = packed(row.getString(2));
            OptionalLong other = synonyms.putIfAbsent(folded, key);
            if (other.isPresent() && other.getAsLong() != key) {
                synonyms.put(folded, SHARED);
            }
        });
        session.each("SELECT lot FROM lot WHERE withdrawn = 0", row -> lots.put(row.getString(1), 1));
    }

    /// The seven characters of a key, a byte each.
    private static long packed(String key) {
        long packed = 0;
        for (int at = 0; at < key.length(); at++) {
            packed = packed << 8 | key.charAt(at);
        }
        return packed;
    }

    private static PlantKey unpacked(long packed) {
        byte[] letters = new byte[7];
        for (int at = 6; at >= 0; at--) {
            letters[at] = (byte) (packed >> 8 * (6 - at));
        }
        return new PlantKey(new String(letters, StandardCharsets.US_ASCII));
    }

    private static Optional<PlantKey> key(OptionalLong packed) {
        return packed.isEmpty() || packed.getAsLong() == SHARED
                ? Optional.empty()
                : Optional.of(unpacked(packed.getAsLong()));
    }

    @Override
    public Optional<PlantKey> byName(BotanicalName name) {
        return key(names.get(name.toString()));
    }

    @Override
    public Optional<PlantKey> bySynonym(String name) {
        return key(synonyms.get(fold(name)));
    }

    @Override
    public Optional<PlantRecord> byKey(PlantKey key) {
        return view.plant(key);
    }

    @Override
    public boolean hasLot(String lot) {
        return lots.get(lot).isPresent();
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
