/// Keys that outlive names, printed addresses and trade numbers.
@NullMarked
package org.benchleaf.shared.code;

import org.jspecify.annotations.NullMarked;
