package org.benchleaf.catalog.prints;

import java.time.Instant;

/// An entry of the print ledger.
///
/// @param number counts up
/// @param at when it was printed
/// @param entry what
public record PrintedEntry(long number, Instant at, PrintEntry entry) {}
