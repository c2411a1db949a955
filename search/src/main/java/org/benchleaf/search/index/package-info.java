/// The index derived from the catalog and the columns read from it: disposable, rebuilt when damaged or of another
/// format. Nothing of the engine shows outside this module.
@NullMarked
package org.benchleaf.search.index;

import org.jspecify.annotations.NullMarked;
