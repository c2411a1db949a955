/// Codes that lead from paper to the live page.
@NullMarked
package org.benchleaf.render.code;

import org.jspecify.annotations.NullMarked;
