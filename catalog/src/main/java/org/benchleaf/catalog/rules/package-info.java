/// Sale rules of states and counties: read from a list, kept with every earlier version, matched to plants by name.
@NullMarked
package org.benchleaf.catalog.rules;

import org.jspecify.annotations.NullMarked;
