package org.benchleaf.catalog.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.benchleaf.catalog.CatalogLocation;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.NewestImport;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.accounts.AccountStore;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.lists.PlantLists;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.catalog.walk.Bulletins;
import org.benchleaf.catalog.walk.CropWalks;
import org.benchleaf.shared.Problem;

/// An open catalog in a database; the front door `Catalog` hands its parts out.
public final class SqlCatalogStore implements AutoCloseable {
    /// With which every file of SQLite begins; source: sqlite.org, Database File Format, 1.3.1.
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private final Database database;
    private final Clock clock;
    private final SqlCatalogView view;
    private final SqlStockLedger ledger;
    private final SqlPlantLists lists;
    private final SqlPrintLedger prints;
    private final SqlCropWalks walks;
    private final SqlBulletins bulletins;
    private final SqlAccountStore accounts;

    private SqlCatalogStore(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
        StockReader stock = new StockReader(clock);
        this.view = new SqlCatalogView(database, stock, clock);
        this.ledger = new SqlStockLedger(database, clock, stock);
        this.lists = new SqlPlantLists(database, clock);
        this.prints = new SqlPrintLedger(database, clock);
        this.walks = new SqlCropWalks(database, clock, stock);
        this.bulletins = new SqlBulletins(database, clock);
        this.accounts = new SqlAccountStore(database);
    }

    /// Makes a new catalog; folders above it are made too.
    ///
    /// @throws CatalogUnusable when there is a file already that is not empty, or none can be written
    ///     there
    public static SqlCatalogStore create(Path file, Clock clock) {
        makeFolder(file);
        if (Files.exists(file)) {
            refuseForeign(file);
        }
        return start(new SqliteDialect(file, true, SqliteDialect.PATIENCE), clock, true);
    }

    /// Opens a catalog and brings an older one up to this program's schema.
    ///
    /// @throws CatalogUnusable when it is missing, no catalog, of a newer program, read-only, damaged or
    ///     locked
    public static SqlCatalogStore open(Path file, Clock clock) {
        if (!Files.exists(file)) {
            throw new CatalogUnusable(Problem.of("catalog.missing", file.toString()));
        }
        refuseForeign(file);
        return start(new SqliteDialect(file, false, SqliteDialect.PATIENCE), clock, false);
    }

    /// Makes a new catalog.
    ///
    /// @throws CatalogUnusable when there is one already, the schema holds other tables, or the server
    ///     refuses
    public static SqlCatalogStore create(CatalogLocation location, Clock clock) {
        return switch (location) {
            case CatalogLocation.InFile(Path file) -> create(file, clock);
            case CatalogLocation.OnServer server ->
                start(new PostgresDialect(server, PostgresDialect.PATIENCE), clock, true);
        };
    }

    /// Opens a catalog and brings an older one up to this program's schema.
    ///
    /// @throws CatalogUnusable as for a file; or when the server cannot be reached or refuses
    public static SqlCatalogStore open(CatalogLocation location, Clock clock) {
        return switch (location) {
            case CatalogLocation.InFile(Path file) -> open(file, clock);
            case CatalogLocation.OnServer server ->
                start(new PostgresDialect(server, PostgresDialect.PATIENCE), clock, false);
        };
    }

    private static void makeFolder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException refused) {
            throw new CatalogUnusable(Problem.of("catalog.read.only", file.toString()), refused);
        }
    }

    /// The driver would take a short text file for an empty database and write into it.
    private static void refuseForeign(Path file) {
        try {
            if (Files.isRegularFile(file)) {
                try (InputStream stream = Files.newInputStream(file)) {
                    byte[] start = stream.readNBytes(MAGIC.length);
                    if (start.length == 0 || Arrays.equals(start, MAGIC)) {
                        return;
                    }
                }
            }
            throw new CatalogUnusable(Problem.of("catalog.not.database", file.toString()));
        } catch (IOException refused) {
            throw new CatalogUnusable(
                    Problem.of("catalog.failed", file.toString()).with("cause", String.valueOf(refused.getMessage())),
                    refused);
        }
    }

    private static SqlCatalogStore start(Dialect dialect, Clock clock, boolean fresh) {
        Database database = new Database(dialect);
        try {
            Migrations migrations = new Migrations(dialect, Migrations.ALL);
            database.write(session -> {
                if (fresh) {
                    migrations.create(session, dialect.shown(), clock.instant());
                } else {
                    migrations.update(session, dialect.shown(), clock.instant());
                    // changes no row, but a file that cannot be written is found out now and not at the first import
                    session.execute("UPDATE catalog_state SET revision = 0 WHERE id = 0");
                }
                return true;
            });
            return new SqlCatalogStore(database, clock);
        } catch (RuntimeException refused) {
            database.close();
            throw refused;
        }
    }

    public CatalogView view() {
        return view;
    }

    public StockLedger ledger() {
        return ledger;
    }

    public PlantLists lists() {
        return lists;
    }

    public PrintLedger prints() {
        return prints;
    }

    public CropWalks walks() {
        return walks;
    }

    public Bulletins bulletins() {
        return bulletins;
    }

    public AccountStore accounts() {
        return accounts;
    }

    public NameBook names() {
        return database.read(session -> new SqlNameBook(session, view));
    }

    /// @throws ImportRefused when the plan cannot be applied
    public CatalogRevision apply(ImportPlan plan, LongConsumer progress) {
        return database.write(session -> PlanApplier.apply(session, plan, clock.instant(), progress));
    }

    /// What a plan would change; nothing is changed.
    ///
    /// @param most how many changed rows are told
    public ImportDiff rehearse(ImportPlan plan, int most, LongConsumer progress) {
        return database.rehearse(session -> {
            DiffCollector collector = new DiffCollector(most);
            return collector.diff(session, PlanApplier.write(session, plan, clock.instant(), collector, progress));
        });
    }

    /// Takes the newest import back.
    public UndoneImport undo() {
        return database.write(session -> ImportUndo.undo(session, clock.instant()));
    }

    public Optional<NewestImport> newestImport() {
        return database.read(ImportUndo::newest);
    }

    /// Takes an import back if it is still the newest one.
    public UndoneImport undo(long id) {
        return database.write(session -> {
            Optional<NewestImport> newest = ImportUndo.newest(session);
            if (newest.isPresent() && newest.get().id() != id) {
                throw new ImportRefused(Problem.of("undo.other", newest.get().file()));
            }
            return ImportUndo.undo(session, clock.instant());
        });
    }

    /// Takes over whom the shop believes when sources disagree.
    public CatalogRevision prefer(List<String> sources) {
        List<String> known =
                database.read(session -> SourcePreference.read(session).named());
        return known.equals(sources)
                ? view.revision()
                : database.write(session -> SourceChoice.prefer(session, sources, clock.instant()));
    }

    /// Loads a list of sale rules in place of the earlier one of its name.
    public CatalogRevision load(RuleList list) {
        return database.write(session -> RuleShelf.load(session, list, clock.instant()));
    }

    /// Calls whenever the catalog has another state, whoever made it.
    public ChangeWatch follow(Consumer<CatalogRevision> follower) {
        return ChangeWatch.start(database, follower);
    }

    public void copy(Path file) {
        database.copy(file);
    }

    public List<Problem> check() {
        return database.read(session -> new StoreCheck(database.dialect()).run(session));
    }

    @Override
    public void close() {
        database.close();
    }
}
