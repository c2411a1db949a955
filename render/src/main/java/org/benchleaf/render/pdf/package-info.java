/// Laid-out XHTML to PDF: fonts, strict resources, vectors, one renderer for a whole run. Nothing here knows a plant.
@NullMarked
package org.benchleaf.render.pdf;

import org.jspecify.annotations.NullMarked;
