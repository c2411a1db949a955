package org.benchleaf.app.web.route;

import java.util.Optional;
import org.benchleaf.shared.Problem;

/// What is answered when no handler can.
@FunctionalInterface
public interface Troubles {
    /// @param status 404 not here, 405 not in this way, 403 not for you, 413 too long, 500 our fault, and the like
    /// @param problem what could not be done, when the handler said so
    Reply of(Request request, int status, Optional<Problem> problem);
}
