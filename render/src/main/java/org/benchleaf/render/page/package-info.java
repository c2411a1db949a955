/// What is printed, as values: one record for each kind of page, filled by the app and put into words only when it is
/// printed. Every optional thing may be missing; the page stays composed without it.
@NullMarked
package org.benchleaf.render.page;

import org.jspecify.annotations.NullMarked;
