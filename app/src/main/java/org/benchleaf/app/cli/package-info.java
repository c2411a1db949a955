/// Commands: parse, call a service, print. No arithmetic, no rules.
@NullMarked
package org.benchleaf.app.cli;

import org.jspecify.annotations.NullMarked;
