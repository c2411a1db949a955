package org.benchleaf.catalog.prints;

import java.time.Instant;

/// A server on which printed codes depend.
///
/// @param base scheme, host and port
/// @param copies how many pieces of paper bear its codes
/// @param last when the newest of them was printed
public record PrintedBase(String base, long copies, Instant last) {}
