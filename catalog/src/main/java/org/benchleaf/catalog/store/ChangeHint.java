package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Duration;

/// A hint that the change feed may have news. It may come late, twice or never: the feed is the truth.
interface ChangeHint extends AutoCloseable {
    /// Waits until there is a hint, and no longer than that.
    void await(Duration longest) throws SQLException, InterruptedException;

    @Override
    void close() throws SQLException;
}
