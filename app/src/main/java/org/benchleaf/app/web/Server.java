package org.benchleaf.app.web;

import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Router;

/// The web server of a workspace. What it answers stands in [Routes].
public final class Server implements AutoCloseable {
    private final Router router;

    private Server(Router router) {
        this.router = router;
    }

    /// Starts answering.
    ///
    /// @param host name or address to listen at
    /// @param port 1 to 65535, or 0 for any free one
    /// @throws org.benchleaf.app.Refusal when the port is taken
    public static Server start(Benchleaf benchleaf, String host, int port) {
        return new Server(Router.start(
                Routes.of(benchleaf),
                Routes.guard(benchleaf),
                new TroublePages(benchleaf),
                benchleaf.settings().base(),
                host,
                port));
    }

    public int port() {
        return router.port();
    }

    @Override
    public void close() {
        router.close();
    }
}
