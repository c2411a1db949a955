@NullMarked
package org.benchleaf.app.web.staff;

import org.jspecify.annotations.NullMarked;
