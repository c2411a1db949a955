@NullMarked
package org.benchleaf.catalog.rules;

import org.jspecify.annotations.NullMarked;
