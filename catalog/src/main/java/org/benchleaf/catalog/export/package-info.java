/// Writes the catalog out as spreadsheets that read back as they were.
@NullMarked
package org.benchleaf.catalog.export;

import org.jspecify.annotations.NullMarked;
