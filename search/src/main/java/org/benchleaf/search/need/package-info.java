/// Reading what a customer says into wishes, and telling which words were understood as what.
@NullMarked
package org.benchleaf.search.need;

import org.jspecify.annotations.NullMarked;
