/// What the catalog holds, as immutable values: plants with sourced facts, items, lots.
@NullMarked
package org.benchleaf.catalog.model;

import org.jspecify.annotations.NullMarked;
