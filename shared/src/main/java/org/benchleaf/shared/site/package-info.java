/// The words a grower uses for a site and for what a plant bears there.
@NullMarked
package org.benchleaf.shared.site;

import org.jspecify.annotations.NullMarked;
