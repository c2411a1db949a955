package org.benchleaf.search.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.util.FixedBitSet;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;

/// The index of a catalog: facts and names in a folder, stock in memory. It can be deleted at any time
/// and is built anew from the catalog. Safe for many threads; each answer is given from one state, while
/// the next one is prepared.
public final class PlantIndex implements AutoCloseable {
    private static final long LOOK_EVERY_NANOS = 100_000_000L;

    private final CatalogView catalog;
    private final IndexBuilder builder;
    private final Dictionaries dictionaries = new Dictionaries();
    private final KeySlots slots = new KeySlots();
    private final IndexOpener opener;
    private IndexFiles files;
    private volatile Snapshot current;
    private final AtomicBoolean looking = new AtomicBoolean();
    private volatile long lookedAt = System.nanoTime();
    /// Holds that ended by then are counted as free; a moment before the stock was read.
    private Instant stockAsOf;

    private PlantIndex(IndexFolder folder, CatalogView catalog) throws IOException {
        this.catalog = catalog;
        this.builder = new IndexBuilder(catalog);
        this.opener = new IndexOpener(folder, catalog, dictionaries, slots);
        this.stockAsOf = catalog.now();
        IndexOpener.Opened opened = opener.open();
        this.files = opened.files();
        this.current = opened.snapshot();
    }

    /// Opens the index, builds it when there is none or it is damaged, ahead of the catalog or of another
    /// format, and catches up with the catalog. While another program holds the folder, the index is
    /// built in memory instead.
    ///
    /// @throws UncheckedIOException when the folder cannot be read or written
    public static PlantIndex open(Path folder, CatalogView catalog) {
        try {
            PlantIndex index = new PlantIndex(new IndexFolder(folder), catalog);
            index.catchUp();
            return index;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// Takes over what changed in the catalog since; call it after each change and from time to time.
    ///
    /// @return the revision it then stands at
    /// @throws UncheckedIOException when the folder cannot be written
    public synchronized CatalogRevision catchUp() {
        CatalogRevision newest = catalog.revision();
        Snapshot old = current;
        CatalogView.Freed freed = catalog.freedSince(stockAsOf);
        if (newest.equals(old.revision()) && freed.plants().isEmpty()) {
            stockAsOf = freed.asOf();
            return newest;
        }
        Set<PlantKey> plants = new LinkedHashSet<>();
        Set<PlantKey> all = new LinkedHashSet<>(freed.plants());
        for (CatalogView.Change change : catalog.changesSince(old.revision())) {
            all.add(change.plant());
            if (change.kind() == CatalogView.Change.Kind.PLANT) {
                plants.add(change.plant());
            }
        }
        try {
            publish(plants.isEmpty() ? old : withPlants(old, plants, newest), all, newest);
            stockAsOf = freed.asOf();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return newest;
    }

    /// Catches up when the catalog was not looked at for a tenth of a second, whoever changed it; so
    /// nothing stays out for long even when another program changed the catalog. While one thread does,
    /// the others go on with what is there.
    public void freshen() {
        if (System.nanoTime() - lookedAt > LOOK_EVERY_NANOS && looking.compareAndSet(false, true)) {
            try {
                catchUp();
                lookedAt = System.nanoTime();
            } finally {
                looking.set(false);
            }
        }
    }

    private Snapshot withPlants(Snapshot old, Set<PlantKey> plants, CatalogRevision newest) throws IOException {
        builder.update(files.writer(), plants);
        files.commit(newest);
        DirectoryReader changed = DirectoryReader.openIfChanged(old.reader(), files.writer());
        if (changed == null) {
            return old;
        }
        List<Segment> segments = Snapshot.segments(changed, old.segments(), dictionaries, slots);
        return new Snapshot(changed, segments, old.stock(), newest);
    }

    private void publish(Snapshot next, Set<PlantKey> stock, CatalogRevision revision) throws IOException {
        Snapshot old = current;
        current = next.with(builder.update(next.stock(), slots, stock), revision);
        if (next.reader() != old.reader()) {
            old.reader().decRef();
        }
    }

    /// Builds the index anew beside the old one, which keeps answering, and then takes its place.
    ///
    /// @return the revision it then stands at
    /// @throws UncheckedIOException when the folder cannot be written; the old index stays
    public synchronized CatalogRevision rebuild() {
        try {
            Snapshot old = current;
            IndexFiles oldFiles = files;
            IndexOpener.Opened opened = opener.buildBeside();
            files = opened.files();
            current = opened.snapshot();
            old.reader().decRef();
            oldFiles.abandon();
            opener.keepNewest();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return catchUp();
    }

    /// The catalog's state that is answered from.
    public CatalogRevision revision() {
        return current.revision();
    }

    /// Ranks every plant for a need.
    ///
    /// @param words what the names must hold, all of it; may be empty
    /// @param facets what to count
    /// @param limit how many of the best to name
    public Proposal propose(Need need, String words, Set<Facet> facets, YearWeek now, int limit) {
        List<String> wanted = FoldedName.words(words);
        return ask(snapshot -> {
            Optional<List<FixedBitSet>> allowed = wanted.isEmpty()
                    ? Optional.empty()
                    : Optional.of(NameQueries.bits(snapshot, NameQueries.words(wanted)));
            return new NeedPass(snapshot, dictionaries, need, facets, now, limit).run(allowed);
        });
    }

    /// The plants of which a name of this kind, folded, is this; in the order of names.
    public List<Named> named(WrittenName.Kind kind, String folded, int limit) {
        return ask(snapshot -> NameReads.whole(snapshot, kind, folded, limit));
    }

    /// The plants of which a name of this kind, folded, begins so; by that name.
    public List<Named> beginning(WrittenName.Kind kind, String folded, int limit) {
        return ask(snapshot -> NameReads.beginning(snapshot, kind, folded, limit));
    }

    /// The plants whose names hold these words, the last one perhaps unfinished; in the order of names.
    public List<Named> withWords(List<String> words, int limit) {
        return words.isEmpty() ? List.of() : ask(snapshot -> NameReads.words(snapshot, words, limit));
    }

    /// The plants whose names hold words that begin like these, `ilex ver winter`; in the order of names.
    public List<Named> withWordsBegun(List<String> words, int limit) {
        return words.isEmpty() ? List.of() : ask(snapshot -> NameReads.wordsBegun(snapshot, words, limit));
    }

    /// The plants whose names are spelt most like what was said, in no promised order.
    public List<Named> spelt(SaidNames said, int limit) {
        return ask(snapshot -> NameReads.like(snapshot, said, false, limit));
    }

    /// The plants whose names are spelt or sound most like it, in no promised order.
    public List<Named> like(SaidNames said, int limit) {
        return ask(snapshot -> NameReads.like(snapshot, said, true, limit));
    }

    /// Asks the newest state and keeps its files open meanwhile.
    private <T> T ask(Question<T> question) {
        while (true) {
            Snapshot snapshot = current;
            if (snapshot.reader().tryIncRef()) {
                try {
                    return question.ask(snapshot);
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                } finally {
                    release(snapshot);
                }
            }
            if (snapshot == current) {
                throw new IllegalStateException("the index is closed");
            }
        }
    }

    private static void release(Snapshot snapshot) {
        try {
            snapshot.reader().decRef();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Override
    public synchronized void close() {
        try {
            current.reader().decRef();
            files.close();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// Something asked of one state.
    private interface Question<T> {
        T ask(Snapshot snapshot) throws IOException;
    }
}
