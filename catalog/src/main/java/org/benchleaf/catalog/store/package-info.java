/// The catalog in a database: one file of SQLite, plain SQL, one writer at a time, readers that each see one state.
/// Everything that differs between databases is in `Dialect`.
@NullMarked
package org.benchleaf.catalog.store;

import org.jspecify.annotations.NullMarked;
