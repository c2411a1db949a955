/// What was printed: when, for which item, at which price and address, in how many copies. Paper cannot be changed, so
/// this is how the shop knows what stands in the field.
@NullMarked
package org.benchleaf.catalog.prints;

import org.jspecify.annotations.NullMarked;
