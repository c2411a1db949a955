@NullMarked
package org.benchleaf.catalog.accounts;

import org.jspecify.annotations.NullMarked;
