package org.benchleaf.app.web.route;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/// What somebody goes on sending whose request is answered already: it is taken and thrown away. A connection closed
/// under a sender may take the answer with it (RFC 9112, 9.6), and a browser then shows an error of its own instead of
/// the reason.
final class Unread {
    /// Bytes taken at most. Who sends more may find the connection closed.
    static final long MOST = 256L * 1024 * 1024;

    private static final Logger LOG = LoggerFactory.getLogger(Unread.class);

    private Unread() {}

    /// Reads the rest of the body, whoever sends it; at once when there is none.
    static void discard(Context context) {
        // who asks before sending waits for the answer and sends nothing; what is longer is never sent to the end
        if (context.header("Expect") != null || context.req().getContentLengthLong() > MOST) {
            context.header("Connection", "close");
            return;
        }
        try {
            InputStream body = context.req().getInputStream();
            byte[] thrownAway = new byte[16 * 1024];
            long taken = 0;
            int read = 0;
            while (read >= 0 && taken <= MOST) {
                taken += read;
                read = body.read(thrownAway);
            }
            if (read >= 0) {
                context.header("Connection", "close");
            }
        } catch (IOException gone) {
            LOG.debug("{} was not sent to the end", context.path(), gone);
        }
    }
}
