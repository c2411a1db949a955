package org.benchleaf.search.index;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.LockObtainFailedException;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;

/// Opens the newest building of the index that can be trusted, or builds one.
///
/// @param folder where buildings are
/// @param catalog what is indexed
/// @param dictionaries receive the texts of the columns
/// @param slots receive the keys of the plants
record IndexOpener(IndexFolder folder, CatalogView catalog, Dictionaries dictionaries, KeySlots slots) {
    /// Opens what is there, or builds anew when nothing there is whole, of this format and not ahead of the
    /// catalog.
    Opened open() throws IOException {
        for (Path building : folder.buildings()) {
            try {
                Optional<Opened> opened = open(FSDirectory.open(building));
                if (opened.isPresent()) {
                    folder.keepOnly(building);
                    return opened.get();
                }
            } catch (LockObtainFailedException heldByAnother) {
                return build(new ByteBuffersDirectory());
            } catch (IOException | RuntimeException damaged) {
                // built anew below: nothing is in it that the catalog does not have
            }
        }
        Opened opened = buildBeside();
        keepNewest();
        return opened;
    }

    /// Builds the index in a subfolder of its own.
    Opened buildBeside() throws IOException {
        return build(FSDirectory.open(folder.next()));
    }

    /// Deletes all buildings but the newest; they must be closed.
    void keepNewest() throws IOException {
        folder.keepOnly(folder.buildings().getFirst());
    }

    private Optional<Opened> open(Directory directory) throws IOException {
        Optional<IndexFiles> found = IndexFiles.open(directory);
        if (found.isEmpty()) {
            directory.close();
            return Optional.empty();
        }
        try {
            if (found.get().revision().compareTo(catalog.revision()) <= 0) {
                return Optional.of(new Opened(found.get(), snapshot(found.get(), stock())));
            }
            found.get().abandon();
            return Optional.empty();
        } catch (IOException | RuntimeException damaged) {
            found.get().abandon();
            throw damaged;
        }
    }

    private Opened build(Directory directory) throws IOException {
        CompletableFuture<StockPacking> stock = stock();
        IndexFiles built = new IndexBuilder(catalog).build(directory);
        return new Opened(built, snapshot(built, stock));
    }

    /// The stock is read at the same time as the plants.
    private CompletableFuture<StockPacking> stock() {
        return CompletableFuture.supplyAsync(() -> StockPacking.of(catalog));
    }

    /// The state that both plants and stock have come to at least: what changed since is taken over after opening.
    private Snapshot snapshot(IndexFiles opened, CompletableFuture<StockPacking> read) throws IOException {
        DirectoryReader reader = DirectoryReader.open(opened.writer());
        List<Segment> segments = Snapshot.segments(reader, List.of(), dictionaries, slots);
        StockPacking stock = read.join();
        CatalogRevision revision = opened.revision();
        CatalogRevision earlier = stock.revision().compareTo(revision) < 0 ? stock.revision() : revision;
        return new Snapshot(reader, segments, stock.columns(slots), earlier);
    }

    /// An index just opened: its files and its first state.
    record Opened(IndexFiles files, Snapshot snapshot) {}
}
