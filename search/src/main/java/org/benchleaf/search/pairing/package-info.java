/// What goes with a plant: partners for its fruit, and companions that like the same site and show when it
/// does not.
@NullMarked
package org.benchleaf.search.pairing;

import org.jspecify.annotations.NullMarked;
