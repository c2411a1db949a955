package org.benchleaf.catalog.store;

import java.sql.SQLException;

/// Hears of every row that an import makes, changes or removes, in the order in which it does so.
@FunctionalInterface
interface ChangeLog {
    void add(RowChange change) throws SQLException;
}
