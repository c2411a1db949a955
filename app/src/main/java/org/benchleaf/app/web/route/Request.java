package org.benchleaf.app.web.route;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// What was asked, decoded. Nothing in it can be trusted but the identity.
public final class Request {
    /// The field of a form that proves which page it came from.
    public static final String FORM_TOKEN = "form-token";

    /// The same as a header, for scripts.
    public static final String FORM_TOKEN_HEADER = "Form-Token";

    private static final String BEARER = "Bearer ";

    private final Context context;
    private final Guard guard;
    private @Nullable Optional<Identity> identity;

    Request(Context context, Guard guard) {
        this.context = context;
        this.guard = guard;
    }

    public String path() {
        return context.path();
    }

    /// What stands in the address where the route says `{name}`, decoded.
    public String part(String name) {
        return context.pathParam(name);
    }

    /// What stands after `?name=`, the first if there are several.
    public Optional<String> query(String name) {
        return Optional.ofNullable(context.queryParam(name));
    }

    /// All that stand after `?name=`, in order.
    public List<String> queries(String name) {
        return List.copyOf(context.queryParams(name));
    }

    /// A field of the form that was sent in, the first if there are several.
    public Optional<String> form(String name) {
        return Optional.ofNullable(context.formParam(name));
    }

    /// All fields of that name, in order.
    public List<String> forms(String name) {
        return List.copyOf(context.formParams(name));
    }

    /// A file that was sent in; empty when the field was left empty.
    public Optional<Upload> upload(String name) {
        return Optional.ofNullable(context.uploadedFile(name))
                .filter(file -> file.size() > 0)
                .map(Request::upload);
    }

    private static Upload upload(UploadedFile file) {
        return new Upload(file.filename(), file.size(), file.content());
    }

    /// The body as it came.
    public byte[] body() {
        return context.bodyAsBytes();
    }

    public Optional<String> header(String name) {
        return Optional.ofNullable(context.header(name));
    }

    public Optional<String> cookie(String name) {
        return Optional.ofNullable(context.cookie(name));
    }

    /// The network address that the connection comes from: behind a proxy, the proxy's.
    public String address() {
        return context.ip();
    }

    /// Whether it is asked for data and not for a page.
    public boolean wantsData() {
        return path().startsWith("/api/");
    }

    /// Who asks, if anybody the guard knows: by a token when one is sent, else by the session. An answer for somebody
    /// known is never kept by caches, whatever the route says.
    public Optional<Identity> identity() {
        if (identity == null) {
            identity = bearer().isPresent() ? byToken() : guard.bySession(this);
        }
        return identity;
    }

    /// Who asks, on a route that lets in only those who are known.
    public Identity who() {
        return identity().orElseThrow(() -> new IllegalStateException(path() + " is open to everyone"));
    }

    Optional<Identity> byToken() {
        return bearer().flatMap(token -> guard.byToken(this, token));
    }

    Optional<Identity> bySession() {
        return guard.bySession(this);
    }

    void identified(Identity who) {
        identity = Optional.of(who);
    }

    boolean isForSomebody() {
        return identity != null && identity.isPresent();
    }

    private Optional<String> bearer() {
        return header("Authorization")
                .filter(value -> value.regionMatches(true, 0, BEARER, 0, BEARER.length()))
                .map(value -> value.substring(BEARER.length()).strip());
    }

    /// The token of the page that this change came from.
    Optional<String> formToken() {
        return header(FORM_TOKEN_HEADER).or(() -> form(FORM_TOKEN));
    }
}
