package org.benchleaf.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/// Pieces of addresses.
final class Paths {
    private Paths() {}

    /// For what stands after a `=`.
    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
