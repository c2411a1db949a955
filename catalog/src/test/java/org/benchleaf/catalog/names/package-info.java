@NullMarked
package org.benchleaf.catalog.names;

import org.jspecify.annotations.NullMarked;
