@NullMarked
package org.benchleaf.catalog.intake;

import org.jspecify.annotations.NullMarked;
