/// Quantities with one unit each: zones, lengths, months, weeks, pH, money. Converted once on reading; the unit
/// of the text is then gone.
@NullMarked
package org.benchleaf.shared.measure;

import org.jspecify.annotations.NullMarked;
