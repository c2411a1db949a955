package org.benchleaf.catalog.export;

import java.io.IOException;
import java.util.List;

/// Takes rows of texts, the headings first.
interface TableWriter extends AutoCloseable {
    void row(List<String> cells) throws IOException;

    @Override
    void close() throws IOException;
}
