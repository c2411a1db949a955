/// Outcomes of reading text, common to every value: what was read, or why it was refused.
@NullMarked
package org.benchleaf.shared;

import org.jspecify.annotations.NullMarked;
