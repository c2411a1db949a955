/// The arithmetic of planting: areas, spacings, how many plants they take.
@NullMarked
package org.benchleaf.shared.plan;

import org.jspecify.annotations.NullMarked;
