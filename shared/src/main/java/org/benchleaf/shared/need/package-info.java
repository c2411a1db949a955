/// What a customer asks (wishes) and why a plant fits or falls short (reasons): values, no prose.
@NullMarked
package org.benchleaf.shared.need;

import org.jspecify.annotations.NullMarked;
