package org.benchleaf.app.web.route;

import java.util.Optional;

/// Knows who asks. The router calls it before any handler, for every route that is not for everyone.
public interface Guard {
    /// Knows nobody: a server without staff.
    Guard NOBODY = new Guard() {
        @Override
        public Optional<Reply> refused(Request request) {
            return Optional.empty();
        }

        @Override
        public Optional<Identity> bySession(Request request) {
            return Optional.empty();
        }

        @Override
        public Optional<Identity> byToken(Request request, String token) {
            return Optional.empty();
        }

        @Override
        public Reply signIn(Request request) {
            return Reply.status(403);
        }
    };

    /// Turns away before anybody is asked who they are, such as on a line that others can listen on.
    Optional<Reply> refused(Request request);

    /// Whose browser this is, by its cookie.
    Optional<Identity> bySession(Request request);

    /// Whose program this is.
    ///
    /// @param token what stood after `Authorization: Bearer`
    Optional<Identity> byToken(Request request, String token);

    /// Where somebody unknown is sent, such as to the page where one signs in.
    Reply signIn(Request request);
}
