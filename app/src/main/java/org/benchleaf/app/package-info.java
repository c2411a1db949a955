/// The top of the house: knows every module, wires them together, turns problems into words and exit codes.
@NullMarked
package org.benchleaf.app;

import org.jspecify.annotations.NullMarked;
