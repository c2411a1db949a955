/// Benchmarks on made-up catalogs of real shape: deterministic, each a whole process, figures printed as a table.
@NullMarked
package org.benchleaf.bench;

import org.jspecify.annotations.NullMarked;
