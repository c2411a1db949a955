package org.benchleaf.app.web.route;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/// What a browser is told it may do with an answer, so that nothing smuggled in would run.
///
/// Everywhere: types are not guessed, no frame of another page shows it, other sites learn no address. The referrer is
/// kept within this server and not forbidden altogether, since browsers send `Origin: null` with forms of pages that
/// forbid it (Fetch Standard, "append a request Origin header").
public enum Headers {
    /// A page without script.
    PAGE("style-src 'unsafe-inline'; img-src 'self' data:; form-action 'self'", false),
    /// A page whose scripts and styles come from this server as files; none stands in the page.
    SCRIPTED(
            "script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self';"
                    + " connect-src 'self'; form-action 'self'",
            false),
    /// The same with camera and microphone, a worker and a manifest: the crop walk.
    WALK(
            "script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self';"
                    + " connect-src 'self'; media-src 'self' blob:; worker-src 'self'; manifest-src 'self';"
                    + " form-action 'self'",
            true),
    /// A worker's script: it asks this server and nobody else.
    WORKER("script-src 'self'; connect-src 'self'", false),
    /// Data, pictures, scripts and files: nothing in them is a page, and nothing in them runs. Not `sandbox`: browsers
    /// then refuse to show a PDF.
    FILE("style-src 'unsafe-inline'", false),
    /// The same for what pages of other sites may read as well: only what everybody is told. A browser
    /// hands them no answer to a request that carries a cookie (Fetch Standard, "CORS check").
    OPEN("style-src 'unsafe-inline'", false, "*");

    private final Map<String, String> headers;

    Headers(String content, boolean senses) {
        this(content, senses, "");
    }

    Headers(String content, boolean senses, String readers) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(
                "Content-Security-Policy",
                "default-src 'none'; " + content + "; base-uri 'none'; frame-ancestors 'none'");
        all.put("X-Content-Type-Options", "nosniff");
        all.put("Referrer-Policy", "same-origin");
        all.put(
                "Permissions-Policy",
                senses
                        ? "camera=(self), microphone=(self), geolocation=(), payment=(), usb=()"
                        : "camera=(), microphone=(), geolocation=(), payment=(), usb=()");
        all.put("Cross-Origin-Opener-Policy", "same-origin");
        if (!readers.isEmpty()) {
            all.put("Access-Control-Allow-Origin", readers);
        }
        this.headers = Map.copyOf(all);
    }

    /// Names and values.
    public Map<String, String> all() {
        return headers;
    }

    /// How it is told in the printed table.
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }
}
