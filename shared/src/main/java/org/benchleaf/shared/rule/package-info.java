/// What the law of a place says about selling a plant there: areas, dates, and the verdict for one shipment.
@NullMarked
package org.benchleaf.shared.rule;

import org.jspecify.annotations.NullMarked;
