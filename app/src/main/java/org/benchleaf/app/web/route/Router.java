package org.benchleaf.app.web.route;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/// Listens, and answers each address by its route: rules first, then the handler. The only class that registers
/// anything with the web framework.
public final class Router implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Router.class);
    private static final Set<HandlerType> WITHOUT_BODY = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final Guard guard;
    private final Troubles troubles;
    private final Origins origins;
    private final Javalin javalin;

    private Router(RouteTable table, Guard guard, Troubles troubles, URI base) {
        this.guard = guard;
        this.troubles = troubles;
        this.origins = new Origins(base);
        this.javalin = Javalin.create(config -> configure(config, table));
    }

    /// Starts answering.
    ///
    /// @param base the address by which people reach the server
    /// @param host name or address to listen at
    /// @param port 1 to 65535, or 0 for any free one
    /// @throws Refusal when the port is taken
    public static Router start(RouteTable table, Guard guard, Troubles troubles, URI base, String host, int port) {
        Router router = new Router(table, guard, troubles, base);
        try {
            router.javalin.start(host, port);
        } catch (JavalinBindException taken) {
            throw new Refusal(Problem.of("port.taken", Integer.toString(port)).with("host", host));
        }
        return router;
    }

    private void configure(JavalinConfig config, RouteTable table) {
        config.startup.showJavalinBanner = false;
        config.concurrency.useVirtualThreads = true;
        // printed addresses are in capitals: /P/KEY
        config.router.caseInsensitiveRoutes = true;
        config.http.prefer405over404 = true;
        config.http.compressionStrategy = CompressionStrategy.NONE; // done here, once for a kept page
        config.http.maxRequestSize = table.mostBytes();
        config.jetty.multipartConfig.maxTotalRequestSize(Math.max(1, table.mostBytes()), SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(Math.max(1, table.mostBytes()), SizeUnit.BYTES);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
        });
        config.routes.before(context -> {
            Headers.PAGE.all().forEach(context::header);
            context.header("Cache-Control", Keeping.NEVER.header());
        });
        for (Route route : table.routes()) {
            HandlerType verb = HandlerType.findOrCreate(route.verb().name());
            config.routes.addHttpHandler(verb, route.path(), context -> answer(route, context));
            if (verb == HandlerType.GET) {
                config.routes.addHttpHandler(HandlerType.HEAD, route.path(), context -> answer(route, context));
            }
        }
        config.routes.exception(HttpResponseException.class, (unanswered, context) -> {
            Request request = new Request(context, guard);
            write(troubles.of(request, unanswered.getStatus(), Optional.empty()), Keeping.NEVER, context);
        });
        config.routes.exception(Exception.class, (failure, context) -> {
            LOG.error("{} {} failed", context.method(), context.path(), failure);
            write(troubles.of(new Request(context, guard), 500, Optional.empty()), Keeping.NEVER, context);
        });
    }

    private void answer(Route route, Context context) throws IOException {
        route.headers().all().forEach(context::header);
        Request request = new Request(context, guard);
        Reply reply = ruled(route, request, context);
        if (reply.isBareTrouble()) {
            Reply told = troubles.of(request, reply.status(), Optional.empty());
            reply = reply.headers().entrySet().stream()
                    .reduce(told, (made, header) -> made.with(header.getKey(), header.getValue()), (one, other) -> one);
        }
        // where somebody is sent on to depends on who asks
        boolean answered = reply.status() < 300 || reply.status() == 304;
        boolean shared = answered && !request.isForSomebody();
        boolean own = answered && route.keeping() == Keeping.ASK_FIRST_PRIVATELY;
        write(reply, shared || own ? route.keeping() : Keeping.NEVER, context);
    }

    /// Obeys the route's rules one after the other; only then calls its handler.
    private Reply ruled(Route route, Request request, Context context) throws IOException {
        if (!WITHOUT_BODY.contains(context.method())) {
            long length = context.req().getContentLengthLong();
            if (length < 0 && request.header("Transfer-Encoding").isPresent()) {
                return Reply.status(411); // how long it is must be said before it is read
            }
            if (length > route.mostBytes()) {
                return Reply.status(413);
            }
        }
        if (!(route.access() instanceof Access.Everyone)) {
            Optional<Reply> refused = guard.refused(request);
            if (refused.isPresent()) {
                return refused.get();
            }
        }
        Optional<Reply> stopped = switch (route.access()) {
            case Access.Everyone() -> Optional.empty();
            case Access.Door() -> Optional.empty();
            case Access.SignedIn(Right right) ->
                admitted(request, request.bySession(), right, () -> guard.signIn(request));
            case Access.Token(Right right) ->
                admitted(
                        request,
                        request.byToken(),
                        right,
                        () -> Reply.status(401).with("WWW-Authenticate", "Bearer"));
        };
        if (stopped.isPresent()) {
            return stopped.get();
        }
        if (!isSentByUs(route, request)) {
            return Reply.status(403);
        }
        try {
            return route.handler().answer(request);
        } catch (Refusal refusal) {
            return troubles.of(request, 400, Optional.of(refusal.problem()));
        }
    }

    private static Optional<Reply> admitted(
            Request request, Optional<Identity> who, Right right, Supplier<Reply> unknown) {
        if (who.isEmpty()) {
            return Optional.of(unknown.get());
        }
        request.identified(who.get());
        return who.get().may(right) ? Optional.empty() : Optional.of(Reply.status(403));
    }

    private boolean isSentByUs(Route route, Request request) {
        return switch (route.forgery()) {
            case READS, NO_COOKIE -> true;
            case ORIGIN -> origins.isOurs(request);
            case ORIGIN_AND_TOKEN ->
                origins.isOurs(request)
                        && request.formToken()
                                .filter(sent -> same(sent, request.who().formToken()))
                                .isPresent();
        };
    }

    /// Takes as long whichever letter differs.
    private static boolean same(String sent, String expected) {
        return !expected.isEmpty()
                && MessageDigest.isEqual(
                        sent.getBytes(StandardCharsets.UTF_8), expected.getBytes(StandardCharsets.UTF_8));
    }

    private static void write(Reply reply, Keeping keeping, Context context) {
        if (!WITHOUT_BODY.contains(context.method())) {
            Unread.discard(context);
        }
        context.status(reply.status());
        context.header("Cache-Control", keeping.header());
        reply.headers().forEach(context::header);
        reply.cookies().forEach(cookie -> context.res().addHeader("Set-Cookie", cookie.header()));
        if (!reply.type().isEmpty()) {
            context.contentType(reply.type());
        }
        switch (reply.content()) {
            case Reply.Content.Bytes(byte[] bytes) -> writeAtOnce(reply, bytes, keeping, context);
            case Reply.Content.Stream(Reply.Writer writer) -> {
                try {
                    writer.writeTo(context.outputStream());
                } catch (IOException gone) {
                    LOG.debug("{} was not taken to the end", context.path(), gone);
                }
            }
        }
    }

    /// Only what everybody may see is squeezed: how long a squeezed page is tells of the secrets in it when part of the
    /// page can be chosen by others.
    private static void writeAtOnce(Reply reply, byte[] bytes, Keeping keeping, Context context) {
        boolean squeeze = keeping.tagged() && keeping != Keeping.ASK_FIRST_PRIVATELY && reply.isSqueezable();
        boolean gzip = squeeze
                && Optional.ofNullable(context.header("Accept-Encoding"))
                        .filter(known -> known.contains("gzip"))
                        .isPresent();
        if (squeeze) {
            context.header("Vary", "Accept-Encoding");
        }
        if (keeping.tagged() && reply.status() == 200) {
            // other bytes, other tag (RFC 9110, 8.8.3.3)
            String tag = "\"" + reply.tag() + (gzip ? "-z\"" : "\"");
            context.header("ETag", tag);
            if (isKnown(tag, context)) {
                context.status(304);
                return;
            }
        }
        if (gzip) {
            context.header("Content-Encoding", "gzip");
            context.result(reply.squeezed());
        } else if (bytes.length > 0) {
            context.result(bytes);
        }
    }

    /// Whether the one who asks has this content already.
    private static boolean isKnown(String tag, Context context) {
        return Optional.ofNullable(context.header("If-None-Match")).stream()
                .flatMap(known -> Arrays.stream(known.split(",")))
                .map(String::strip)
                // a proxy that squeezed the content says so with W/ (RFC 9110, 13.1.2: compared weakly)
                .map(known -> known.startsWith("W/") ? known.substring(2) : known)
                .anyMatch(known -> known.equals(tag) || known.equals("*"));
    }

    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
