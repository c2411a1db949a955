/// Who states a fact, and where on the map it holds.
@NullMarked
package org.benchleaf.shared.fact;

import org.jspecify.annotations.NullMarked;
