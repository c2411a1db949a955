/// The crop walk in a browser: the files a telephone keeps, the names and rows it carries, the
/// sightings it sends, and the bulletin made of them.
@NullMarked
package org.benchleaf.app.web.walk;

import org.jspecify.annotations.NullMarked;
