/// Between catalog, search and paper: what the commands and the server both do.
@NullMarked
package org.benchleaf.app.service;

import org.jspecify.annotations.NullMarked;
