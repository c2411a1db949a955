/// Pages to paper and to the web: the front doors [org.benchleaf.render.Printer] and [org.benchleaf.render.WebPages].
@NullMarked
package org.benchleaf.render;

import org.jspecify.annotations.NullMarked;
