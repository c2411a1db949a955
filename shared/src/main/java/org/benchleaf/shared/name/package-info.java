/// Botanical and cultivated-plant names as values: parts kept apart, written by the rules of ICN and ICNCP. Reading
/// free text is the catalog's work.
@NullMarked
package org.benchleaf.shared.name;

import org.jspecify.annotations.NullMarked;
