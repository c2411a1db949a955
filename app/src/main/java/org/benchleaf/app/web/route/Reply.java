package org.benchleaf.app.web.route;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What a handler answers. Headers that follow from the route's rules are not in it: the router adds them.
public final class Reply {
    private final int status;
    private final String type;
    private final Content content;
    private final Map<String, String> headers;
    private final List<Cookie> cookies;

    private Reply(int status, String type, Content content, Map<String, String> headers, List<Cookie> cookies) {
        this.status = status;
        this.type = type;
        this.content = content;
        this.headers = Map.copyOf(headers);
        this.cookies = List.copyOf(cookies);
    }

    /// What is sent: all at once, so that a tag can be taken of it, or bit by bit.
    sealed interface Content {
        record Bytes(byte[] bytes) implements Content {}

        record Stream(Writer writer) implements Content {}
    }

    /// Writes a long answer bit by bit.
    @FunctionalInterface
    public interface Writer {
        void writeTo(OutputStream out) throws IOException;
    }

    /// A cookie that scripts cannot read and other sites cannot send.
    ///
    /// @param lasts zero takes it away
    /// @param secure whether it is sent over TLS only
    public record Cookie(String name, String value, Duration lasts, boolean secure) {
        String header() {
            return name + "=" + value + "; Path=/; Max-Age=" + lasts.toSeconds() + "; HttpOnly; SameSite=Strict"
                    + (secure ? "; Secure" : "");
        }
    }

    /// A page.
    public static Reply page(String html) {
        return of("text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8));
    }

    /// Anything else.
    ///
    /// @param type its media type, with the charset when it is text
    public static Reply of(String type, byte[] content) {
        return new Reply(200, type, new Content.Bytes(content), Map.of(), List.of());
    }

    /// Something long, written while it is sent.
    public static Reply stream(String type, Writer writer) {
        return new Reply(200, type, new Content.Stream(writer), Map.of(), List.of());
    }

    /// After a change: the page that shows it.
    public static Reply seeOther(String path) {
        return status(303).with("Location", path);
    }

    /// Elsewhere, for now.
    public static Reply found(String path) {
        return status(302).with("Location", path);
    }

    /// Not here; the server's own page says so.
    public static Reply missing() {
        return status(404);
    }

    /// Nothing but a status; from 400 on the server's own page tells it in words.
    public static Reply status(int status) {
        return new Reply(status, "", new Content.Bytes(new byte[0]), Map.of(), List.of());
    }

    /// The same content with another status.
    public Reply withStatus(int other) {
        return new Reply(other, type, content, headers, cookies);
    }

    /// The same with one header more.
    public Reply with(String header, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(header, value);
        return new Reply(status, type, content, more, cookies);
    }

    /// The same, to be saved under a name instead of shown.
    public Reply download(String file) {
        String plain = file.replaceAll("[^A-Za-z0-9._ -]", "_");
        String encoded = URLEncoder.encode(file, StandardCharsets.UTF_8).replace("+", "%20");
        return with("Content-Disposition", "attachment; filename=\"" + plain + "\"; filename*=UTF-8''" + encoded);
    }

    /// The same with one cookie more.
    public Reply with(Cookie cookie) {
        List<Cookie> more = new ArrayList<>(cookies);
        more.add(cookie);
        return new Reply(status, type, content, headers, more);
    }

    public int status() {
        return status;
    }

    String type() {
        return type;
    }

    Content content() {
        return content;
    }

    Map<String, String> headers() {
        return headers;
    }

    List<Cookie> cookies() {
        return cookies;
    }

    /// Whether it has no words of its own and the server's page must tell what happened.
    boolean isBareTrouble() {
        return status >= 400 && content instanceof Content.Bytes(byte[] bytes) && bytes.length == 0;
    }

    /// The content when it is there at once.
    Optional<byte[]> bytes() {
        return content instanceof Content.Bytes(byte[] bytes) ? Optional.of(bytes) : Optional.empty();
    }
}
