/// The front door of searching: a need goes in, judged plants come out. The index only proposes; the catalog is
/// read for what is said.
@NullMarked
package org.benchleaf.search;

import org.jspecify.annotations.NullMarked;
