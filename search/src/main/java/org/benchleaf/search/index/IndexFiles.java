package org.benchleaf.search.index;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.analysis.core.KeywordAnalyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.store.Directory;
import org.benchleaf.catalog.CatalogRevision;

/// The files of one index, held open for writing.
///
/// @param directory where they are
/// @param writer the one writer
record IndexFiles(Directory directory, IndexWriter writer) {
    private static final double BUFFER_MB = 64;

    /// Starts an empty index; what is there is overwritten.
    static IndexFiles create(Directory directory) throws IOException {
        return new IndexFiles(directory, new IndexWriter(directory, config(IndexWriterConfig.OpenMode.CREATE)));
    }

    /// Opens an index that is whole and of this format.
    ///
    /// @return empty when it is of another format, or unfinished
    /// @throws IOException when files are damaged or missing
    static Optional<IndexFiles> open(Directory directory) throws IOException {
        if (!DirectoryReader.indexExists(directory)) {
            return Optional.empty();
        }
        try (DirectoryReader reader = DirectoryReader.open(directory)) {
            if (IndexFormat.revision(reader.getIndexCommit().getUserData()).isEmpty()) {
                return Optional.empty();
            }
            for (LeafReaderContext leaf : reader.leaves()) {
                leaf.reader().checkIntegrity();
            }
        }
        return Optional.of(
                new IndexFiles(directory, new IndexWriter(directory, config(IndexWriterConfig.OpenMode.APPEND))));
    }

    private static IndexWriterConfig config(IndexWriterConfig.OpenMode mode) {
        return new IndexWriterConfig(new KeywordAnalyzer())
                .setOpenMode(mode)
                .setCommitOnClose(false)
                .setRAMBufferSizeMB(BUFFER_MB);
    }

    /// The catalog's revision of the last commit.
    CatalogRevision revision() throws IOException {
        try (DirectoryReader reader = DirectoryReader.open(directory)) {
            return IndexFormat.revision(reader.getIndexCommit().getUserData())
                    .orElseThrow(() -> new IOException("an index without a stamp"));
        }
    }

    void commit(CatalogRevision revision) throws IOException {
        Map<String, String> stamp = IndexFormat.stamp(revision);
        writer.setLiveCommitData(stamp.entrySet());
        writer.commit();
    }

    /// Lets go without saving.
    void abandon() throws IOException {
        writer.rollback();
        directory.close();
    }

    void close() throws IOException {
        writer.close();
        directory.close();
    }
}
