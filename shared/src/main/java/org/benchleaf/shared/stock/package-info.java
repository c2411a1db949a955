/// What is counted and sold: sizes of the trade, forms, availability.
@NullMarked
package org.benchleaf.shared.stock;

import org.jspecify.annotations.NullMarked;
