/// Judging one plant against a need: the one place that decides whether a wish is met, and by how much it is
/// missed.
@NullMarked
package org.benchleaf.search.fit;

import org.jspecify.annotations.NullMarked;
