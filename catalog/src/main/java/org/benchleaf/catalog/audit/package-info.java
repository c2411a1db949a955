/// Looks through the catalog for gaps, contradictions and doubts, and gives it a mark that a steward can drive up.
@NullMarked
package org.benchleaf.catalog.audit;

import org.jspecify.annotations.NullMarked;
