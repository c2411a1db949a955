/// The same needs put to other engines on the same data, for comparison; their drivers are not part of the program.
@NullMarked
package org.benchleaf.bench.engines;

import org.jspecify.annotations.NullMarked;
