/// Colors of plants: a word, an sRGB value and its distance to another as an eye sees it.
@NullMarked
package org.benchleaf.shared.color;

import org.jspecify.annotations.NullMarked;
