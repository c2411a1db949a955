/// The front door of the catalog: what is known of plants, where each fact comes from, and the stock behind it.
@NullMarked
package org.benchleaf.catalog;

import org.jspecify.annotations.NullMarked;
