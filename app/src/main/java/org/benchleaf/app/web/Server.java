package org.benchleaf.app.web;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.util.JavalinBindException;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;

/// The web server of a workspace: the pages that printed codes lead to. Public, read-only, sets no cookie.
public final class Server implements AutoCloseable {
    private final Javalin javalin;

    private Server(Javalin javalin) {
        this.javalin = javalin;
    }

    /// Starts answering.
    ///
    /// @param host name or address to listen at
    /// @param port 1 to 65535, or 0 for any free one
    /// @throws Refusal when the port is taken
    public static Server start(Benchleaf benchleaf, String host, int port) {
        PlantPages plants = new PlantPages(benchleaf);
        Javalin javalin = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.concurrency.useVirtualThreads = true;
            // printed addresses are in capitals: /P/KEY
            config.router.caseInsensitiveRoutes = true;
            config.routes.before(Server::secure);
            config.routes.get("/", plants::list);
            config.routes.head("/", plants::list);
            config.routes.get("/p/{key}", plants::page);
            config.routes.head("/p/{key}", plants::page);
            config.routes.get("/find", plants::find);
            config.routes.head("/find", plants::find);
            config.routes.get("/photo/{file}", plants::photograph);
            config.routes.head("/photo/{file}", plants::photograph);
            config.routes.get(
                    "/health",
                    context -> context.result(
                            "ok " + benchleaf.catalog().revision().number()));
            config.routes.error(404, plants::notFound);
        });
        try {
            javalin.start(host, port);
        } catch (JavalinBindException taken) {
            throw new Refusal(Problem.of("port.taken", Integer.toString(port)).with("host", host));
        }
        return new Server(javalin);
    }

    /// Pages need no script, no frame and nothing from elsewhere; say so, so that nothing smuggled in would run.
    private static void secure(Context context) {
        context.header(
                "Content-Security-Policy",
                "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; base-uri 'none'; form-action 'self'; frame-ancestors 'none'");
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        if (context.method() != HandlerType.GET && context.method() != HandlerType.HEAD) {
            context.status(405);
            context.skipRemainingHandlers();
        }
    }

    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
