package org.benchleaf.app.web.route;

import java.io.IOException;

/// Decodes a request, calls a service, makes a reply. Called only after the route's rules were obeyed.
@FunctionalInterface
public interface Handler {
    /// @throws IOException when the one who asked went away
    /// @throws org.benchleaf.app.Refusal when what was asked cannot be done; shown with its words
    Reply answer(Request request) throws IOException;
}
