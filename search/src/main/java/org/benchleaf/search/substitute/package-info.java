/// Plants that do the same work as another: its role becomes a need, the one judge ranks, and what is found is
/// compared with the original point by point. Partners for fruit and companions are found here too.
@NullMarked
package org.benchleaf.search.substitute;

import org.jspecify.annotations.NullMarked;
