/// How names sound when English speakers say them, and words that sound or are spelt nearly alike. Knows no index.
@NullMarked
package org.benchleaf.search.sound;

import org.jspecify.annotations.NullMarked;
