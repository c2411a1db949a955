/// Crop walks: what a seller saw in the rows, what stood in the way of writing it down, and the week's
/// bulletin made of it. Values and ports only.
@NullMarked
package org.benchleaf.catalog.walk;

import org.jspecify.annotations.NullMarked;
