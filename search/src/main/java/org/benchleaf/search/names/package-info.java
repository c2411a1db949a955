/// Looking plants up by a name as people type or say it.
@NullMarked
package org.benchleaf.search.names;

import org.jspecify.annotations.NullMarked;
