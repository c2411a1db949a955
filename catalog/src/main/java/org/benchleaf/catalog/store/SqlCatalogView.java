package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.OwnWord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.rules.SaleRuleBook;
import org.benchleaf.shared.code.PlantKey;

/// The read side over the database. Each call sees one state; two calls may see two.
final class SqlCatalogView implements CatalogView {
    /// Plants in memory at a time when all are handed over.
    private static final int PAGE = 500;

    // in the order in which their facts and items lie on disk: keys are scattered, and would be read page by page
    private static final String NEXT_PLANTS =
            "SELECT serial, plant_key FROM plant WHERE serial > ? AND retired = 0 AND withdrawn = 0 ORDER BY serial"
                    + " LIMIT ?";
    private static final String NEXT_STOCKED =
            "SELECT serial, plant_key FROM plant p WHERE serial > ? AND EXISTS (SELECT 1"
                    + " FROM item i WHERE i.plant = p.serial AND i.withdrawn = 0) ORDER BY serial LIMIT ?";
    private static final String CHANGES = "SELECT c.revision, p.plant_key, c.kind FROM plant_change c"
            + " JOIN plant p ON p.serial = c.plant WHERE c.revision > ? ORDER BY c.revision, p.plant_key, c.kind";

    private final Database database;
    private final RuleShelf rules = new RuleShelf();
    private final PlantReader plants;
    private final StockReader stock;
    private final Clock clock;

    SqlCatalogView(Database database, StockReader stock, Clock clock) {
        this.database = database;
        this.clock = clock;
        this.stock = stock;
        this.plants = new PlantReader(database.dialect(), rules);
    }

    @Override
    public CatalogRevision revision() {
        return database.read(State::revision);
    }

    @Override
    public Optional<Instant> changedAt() {
        return database.read(State::changedAt);
    }

    @Override
    public Map<PlantKey, PlantRecord> plants(Collection<PlantKey> keys) {
        return database.read(session -> plants.read(session, keys));
    }

    @Override
    public Map<PlantKey, PlantStock> stock(Collection<PlantKey> keys) {
        return database.read(session -> stock.read(session, keys));
    }

    @Override
    public SaleRuleBook saleRules() {
        return database.read(rules::book);
    }

    @Override
    public SaleRuleBook saleRulesAt(CatalogRevision revision) {
        return database.read(session -> RuleShelf.bookAt(session, revision));
    }

    @Override
    public CatalogRevision forEachPlant(Consumer<PlantRecord> consumer) {
        return inPages(
                NEXT_PLANTS,
                (session, keys) -> plants.read(session, keys).values().forEach(consumer));
    }

    @Override
    public CatalogRevision forEachStated(BiConsumer<PlantRecord, OwnWord> consumer) {
        return inPages(NEXT_PLANTS, (session, keys) -> {
            Map<PlantKey, OwnWord> own = OwnWords.read(session, keys);
            plants.read(session, keys)
                    .forEach((key, plant) -> consumer.accept(plant, own.getOrDefault(key, OwnWord.NONE)));
        });
    }

    @Override
    public CatalogRevision forEachStock(Consumer<PlantStock> consumer) {
        return inPages(
                NEXT_STOCKED,
                (session, keys) -> stock.read(session, keys).values().forEach(consumer));
    }

    private record Numbered(int serial, PlantKey key) {}

    /// What is done with one page of keys.
    private interface Page {
        void read(Session session, List<PlantKey> keys) throws SQLException;
    }

    private CatalogRevision inPages(String query, Page page) {
        return database.read(session -> {
            CatalogRevision revision = State.revision(session); // the first read fixes the state of the transaction
            int last = -1;
            while (true) {
                List<Numbered> plants = session.list(
                        query, row -> new Numbered(row.getInt(1), new PlantKey(row.getString(2))), last, PAGE);
                if (plants.isEmpty()) {
                    return revision;
                }
                page.read(session, plants.stream().map(Numbered::key).toList());
                last = plants.getLast().serial();
            }
        });
    }

    @Override
    public Instant now() {
        return clock.instant();
    }

    @Override
    public Freed freedSince(Instant moment) {
        return database.read(session -> stock.freedSince(session, moment));
    }

    @Override
    public List<Change> changesSince(CatalogRevision revision) {
        return database.read(session -> session.list(
                CHANGES,
                row -> new Change(
                        new CatalogRevision(row.getLong(1)),
                        new PlantKey(row.getString(2)),
                        Change.Kind.valueOf(row.getString(3))),
                revision.number()));
    }
}
