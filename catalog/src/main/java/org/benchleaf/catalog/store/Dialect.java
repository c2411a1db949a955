package org.benchleaf.catalog.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.benchleaf.shared.Problem;

/// All in which databases differ for the catalog; everything else is SQL that SQLite and PostgreSQL both read.
interface Dialect {
    /// A connection that only reads; a transaction on it sees one state.
    Connection connectReader() throws SQLException;

    /// A connection that writes; a transaction on it waits until no other one writes, then holds the others off.
    Connection connectWriter() throws SQLException;

    /// A migration's text with `${strict}` and `${clustered}` put into the database's own words.
    String words(String migration);

    /// An aggregate that joins a text of many rows, in no promised order: one long text crosses into Java much faster
    /// than many short ones.
    ///
    /// @param text an SQL expression
    /// @param between one character
    String joined(String text, char between);

    /// Why the database refused, as a problem that a shop's owner can act upon.
    Problem explain(SQLException refusal);

    /// What the database itself finds damaged; empty when nothing is.
    List<String> damage(Connection connection) throws SQLException;
}
