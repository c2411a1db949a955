/// The search against published plant lists: what share of the best ten they name, what is missed and why.
@NullMarked
package org.benchleaf.bench.eval;

import org.jspecify.annotations.NullMarked;
