package org.benchleaf.catalog.prints;

import java.time.Instant;

/// An entry of the print ledger.
///
/// @param number counts up
/// @param at when it was printed
/// @param entry what
/// @param who printed it; empty when nobody wrote it down
public record PrintedEntry(long number, Instant at, PrintEntry entry, String who) {}
