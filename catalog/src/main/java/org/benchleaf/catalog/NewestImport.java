package org.benchleaf.catalog;

import java.time.Instant;

/// The import that would be taken back next.
///
/// @param id names it
/// @param file the spreadsheet
/// @param appliedAt when it was loaded
public record NewestImport(long id, String file, Instant appliedAt) {}
