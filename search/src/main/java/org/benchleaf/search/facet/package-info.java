/// What an answer can be narrowed by, with counts.
@NullMarked
package org.benchleaf.search.facet;

import org.jspecify.annotations.NullMarked;
