/// The words for what a plant is and does: life form, habit, foliage, uses, wildlife, cautions.
@NullMarked
package org.benchleaf.shared.plant;

import org.jspecify.annotations.NullMarked;
