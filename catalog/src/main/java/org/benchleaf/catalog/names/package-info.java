/// Reads plant names as people and files write them: parts kept apart, every liberty taken told in a note.
/// Which rule of the codes each step follows is written down in `docs/names.md`. Pure text work; whether a
/// plant exists is not asked here.
@NullMarked
package org.benchleaf.catalog.names;

import org.jspecify.annotations.NullMarked;
