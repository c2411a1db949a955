package org.benchleaf.search.index;

import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.CatalogRevision;

/// What is stamped on every commit of the index: its format and the catalog's revision it holds.
final class IndexFormat {
    /// Raise it when fields, their text or the bases change; an index of another format is built anew.
    static final int VERSION = 10;

    private static final String FORMAT = "benchleaf.format";
    private static final String REVISION = "benchleaf.revision";

    private IndexFormat() {}

    static Map<String, String> stamp(CatalogRevision revision) {
        return Map.of(FORMAT, Integer.toString(VERSION), REVISION, Long.toString(revision.number()));
    }

    /// The revision in a stamp of this format; empty for any other stamp.
    static Optional<CatalogRevision> revision(Map<String, String> stamp) {
        String number = stamp.getOrDefault(REVISION, "");
        boolean ours = stamp.getOrDefault(FORMAT, "").equals(Integer.toString(VERSION)) && number.matches("\\d{1,18}");
        return ours ? Optional.of(new CatalogRevision(Long.parseLong(number))) : Optional.empty();
    }
}
