package org.benchleaf.catalog.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.shared.Problem;

/// All in which databases differ for the catalog; everything else is SQL that SQLite and PostgreSQL both read.
interface Dialect {
    /// The database as messages call it: a file, or an address without its parameters.
    String shown();

    /// A connection that only reads; a transaction on it sees one state.
    Connection connectReader() throws SQLException;

    /// A connection that writes.
    Connection connectWriter() throws SQLException;

    /// Begins a transaction that waits until no other one writes, of this program or another, then holds the others
    /// off until it ends.
    void beginWriting(Connection connection) throws SQLException;

    /// The last thing in a transaction that is kept: may tell other programs that there is news.
    void beforeCommit(Connection connection) throws SQLException;

    /// Whether a connection that was idle can still be used.
    boolean isAlive(Connection connection) throws SQLException;

    /// Whether the connection is gone, and another one may do.
    boolean isLost(SQLException refusal);

    /// What to wait for between two looks at the change feed.
    ChangeHint connectHint() throws SQLException;

    /// A migration's text with `${strict}` and `${clustered}` put into the database's own words.
    String words(String migration);

    /// An aggregate that joins a text of many rows, in no promised order: one long text crosses into Java much
    /// faster than many short ones.
    ///
    /// @param text an SQL expression
    /// @param between one character
    String joined(String text, char between);

    /// Why the database refused, as a problem that a shop's owner can act upon.
    Problem explain(SQLException refusal);

    /// Writes everything as of one state into a file of its own, while others go on reading and writing. The connection
    /// is in no transaction.
    ///
    /// @throws CatalogUnusable when the database is copied by means of its own
    void copy(Connection connection, Path file) throws SQLException;

    /// What the database itself finds damaged; empty when nothing is.
    List<String> damage(Connection connection) throws SQLException;
}
