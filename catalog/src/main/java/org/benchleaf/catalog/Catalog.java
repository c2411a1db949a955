package org.benchleaf.catalog;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.PasswordCost;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.lists.PlantLists;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.catalog.store.SqlCatalogStore;
import org.benchleaf.catalog.walk.Bulletins;
import org.benchleaf.catalog.walk.CropWalks;
import org.benchleaf.shared.Problem;

/// The front door: one open catalog. Safe for many threads; one writes at a time, the others read
/// meanwhile.
///
/// Every method may throw [CatalogUnusable] when the file is taken away, full, damaged or held by another
/// program.
public final class Catalog implements AutoCloseable {
    private final SqlCatalogStore store;
    private final Clock clock;

    private Catalog(SqlCatalogStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /// Makes an empty catalog in a new file.
    ///
    /// @throws CatalogUnusable when there is one already, or nothing can be written there
    public static Catalog create(Path databaseFile) {
        return create(new CatalogLocation.InFile(databaseFile), Clock.systemUTC());
    }

    /// Opens a catalog; an older one is brought up to this program's schema.
    ///
    /// @throws CatalogUnusable when it is missing, no catalog, of a newer program, read-only, damaged or
    ///     locked
    public static Catalog open(Path databaseFile) {
        return open(new CatalogLocation.InFile(databaseFile), Clock.systemUTC());
    }

    /// Makes an empty catalog in a new file or in an empty schema of a server.
    ///
    /// @param clock says what now is: entries bear it, and holds end by it
    /// @throws CatalogUnusable when there is one already, or nothing can be written there
    public static Catalog create(CatalogLocation location, Clock clock) {
        return new Catalog(SqlCatalogStore.create(location, clock), clock);
    }

    /// Opens a catalog; an older one is brought up to this program's schema.
    ///
    /// @param clock says what now is: entries bear it, and holds end by it
    /// @throws CatalogUnusable when it is missing, no catalog, of a newer program, locked, or cannot
    ///     be reached
    public static Catalog open(CatalogLocation location, Clock clock) {
        return new Catalog(SqlCatalogStore.open(location, clock), clock);
    }

    /// The read side: facts and stock as of now.
    public CatalogView view() {
        return store.view();
    }

    /// What a planner needs to know of the catalog as it is now. Ask anew for each plan.
    public NameBook names() {
        return store.names();
    }

    /// Applies a plan as a whole; when this returns, what it changed survives a power cut.
    ///
    /// @return the state it made; the state it found when nothing was different
    /// @throws ImportRefused when names or facts have changed since the plan was made
    ///     (`import.stale`), or lots
    ///     of it have (`import.stale.lots`), or a row contradicts it: `plant.name.taken`,
    ///     `lot.plant.unknown`,
    ///     `lot.other.plant`, `item.numbers.used.up`; nothing is applied then
    public CatalogRevision apply(ImportPlan plan) {
        return store.apply(plan, written -> {});
    }

    /// The same, telling how far it is.
    ///
    /// @param progress hears now and then how many rows are written
    public CatalogRevision apply(ImportPlan plan, LongConsumer progress) {
        return store.apply(plan, progress);
    }

    /// What applying a plan would change, found by applying it and taking it back; nothing is changed.
    ///
    /// @param most how many changed rows are told; the sums count all
    /// @throws ImportRefused as [#apply]
    public ImportDiff rehearse(ImportPlan plan, int most) {
        return store.rehearse(plan, most, written -> {});
    }

    /// The same, telling how far it is.
    ///
    /// @param progress hears now and then how many rows are tried
    public ImportDiff rehearse(ImportPlan plan, int most, LongConsumer progress) {
        return store.rehearse(plan, most, progress);
    }

    /// Takes the newest import back that changed anything: facts, names, plants, items and lots are as
    /// they were. The state counts on, and counts of lots are put back by entries of the ledger, which
    /// only grows.
    ///
    /// @throws ImportRefused when there is none (`undo.none`, `undo.too-old`), or something later stands
    ///     on it; nothing is changed then
    public UndoneImport undo() {
        return store.undo();
    }

    /// The import that [#undo()] would take back; empty when there is none.
    public Optional<NewestImport> newestImport() {
        return store.newestImport();
    }

    /// Takes an import back if it is still the newest one.
    ///
    /// @param id of the import that a person saw
    /// @throws ImportRefused as [#undo()], and when another one came after it (`undo.other`)
    public UndoneImport undo(long id) {
        return store.undo(id);
    }

    /// Takes over whom the shop believes when sources disagree: of what they state the shop's own word is
    /// shown, then that of the source named first here, then the newest. Facts are chosen anew when this
    /// is another list than before.
    ///
    /// @param sources names of sources, or the words with which they begin, the best first
    /// @return the state it made; the state it found when no fact shown is another
    public CatalogRevision prefer(List<String> sources) {
        return store.prefer(sources);
    }

    /// Loads a list of sale rules in place of the earlier one of the same name; the earlier one is kept.
    ///
    /// Every plant then counts as changed, for each says what the lists hold of it.
    ///
    /// @throws ImportRefused when some row of the list could not be read (`rules.broken`)
    public CatalogRevision load(RuleList list) {
        if (list.isBroken()) {
            throw new ImportRefused(Problem.of("rules.broken", list.name()));
        }
        return store.load(list);
    }

    /// Counts, and what changed them.
    public StockLedger ledger() {
        return store.ledger();
    }

    /// Plant lists of jobs.
    public PlantLists lists() {
        return store.lists();
    }

    /// What was printed.
    public PrintLedger prints() {
        return store.prints();
    }

    /// What sellers saw in the rows.
    public CropWalks walks() {
        return store.walks();
    }

    /// The bulletins made of it.
    public Bulletins bulletins() {
        return store.bulletins();
    }

    /// Who may sign in, and what they did. Costs a little random work: keep it.
    public Accounts accounts() {
        return accounts(PasswordCost.RECOMMENDED);
    }

    /// The same with passwords that cost other work.
    Accounts accounts(PasswordCost cost) {
        return new Accounts(store.accounts(), clock, cost);
    }

    /// Follows the catalog: calls within a second of every change, whoever made it, this program or another one
    /// on the same server. Changes close together may be told as one. The calls come from a thread of the
    /// catalog's own, one at a time; they go on when a lost connection is back.
    ///
    /// @return closing it ends the calls; close it before the catalog
    public Following follow(Consumer<CatalogRevision> follower) {
        return store.follow(follower)::close;
    }

    /// Being called upon changes.
    public interface Following extends AutoCloseable {
        @Override
        void close();
    }

    /// Copies the catalog as of one state into a new file, while work goes on.
    ///
    /// @param file must not exist
    /// @throws CatalogUnusable `backup.server` when it lies on a server, which has means of its own; else when the
    ///     file cannot be written
    public void copy(Path file) {
        store.copy(file);
    }

    /// Looks through everything for damage: `check.damage`, `check.count`, `check.hold`, `check.choice`,
    /// `check.fact`.
    ///
    /// @return what was found; empty when all is well
    public List<Problem> check() {
        return store.check();
    }

    /// Waits for what is under way, then lets go of the file.
    @Override
    public void close() {
        store.close();
    }
}
