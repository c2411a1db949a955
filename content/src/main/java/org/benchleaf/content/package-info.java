/// What a shop may change without Java: templates, styles, fonts, words in each language, stock papers.
@NullMarked
package org.benchleaf.content;

import org.jspecify.annotations.NullMarked;
