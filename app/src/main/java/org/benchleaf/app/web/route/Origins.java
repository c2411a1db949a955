package org.benchleaf.app.web.route;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;

/// Tells whether a change was sent by a page of this server.
///
/// Browsers name the page's origin with every form and every script's change (Fetch Standard, "append a request
/// Origin header"); a change without it is turned away.
///
/// @param base the address by which people reach the server
record Origins(URI base) {
    boolean isOurs(Request request) {
        Optional<String> origin = request.header("Origin");
        return origin.isPresent() && isOurs(origin.get(), request.header("Host").orElse(""));
    }

    private boolean isOurs(String origin, String host) {
        String sent = origin.toLowerCase(Locale.ROOT);
        return sent.equals(origin(base))
                || (!host.isEmpty()
                        && (sent.equals("http://" + host.toLowerCase(Locale.ROOT))
                                || sent.equals("https://" + host.toLowerCase(Locale.ROOT))));
    }

    private static String origin(URI address) {
        return (address.getScheme() + "://" + address.getRawAuthority()).toLowerCase(Locale.ROOT);
    }
}
