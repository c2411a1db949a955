/// From a spreadsheet to a plan of changes: rows are read, columns mapped, cells understood or explained. Pure
/// but for reading the file; nothing here writes to the catalog.
@NullMarked
package org.benchleaf.catalog.intake;

import org.jspecify.annotations.NullMarked;
