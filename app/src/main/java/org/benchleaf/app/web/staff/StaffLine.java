package org.benchleaf.app.web.staff;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.app.web.route.Request;

/// The way a request came, when nobody can listen on it: within this computer, or through the proxy
/// with TLS that the settings name.
///
/// @param address the network address of the person, as far as it is known
/// @param secure whether the browser speaks TLS, so that cookies may say so
record StaffLine(String address, boolean secure) {
    private static final Set<String> THIS_COMPUTER = Set.of("localhost", "127.0.0.1", "[::1]", "::1");
    private static final Pattern LITERAL = Pattern.compile("[0-9.]+|[0-9a-fA-F:.]*:[0-9a-fA-F:.]*");

    /// @param base the address by which people reach the server
    /// @param proxy addresses of the proxy
    /// @return empty when somebody could listen, or it cannot be told
    static Optional<StaffLine> of(Request request, URI base, Set<String> proxy) {
        String peer = plain(request.address());
        Optional<String> forwarded = request.header("X-Forwarded-For");
        boolean passedOn = forwarded.isPresent()
                || request.header("X-Forwarded-Proto").isPresent()
                || request.header("Forwarded").isPresent()
                || request.header("Via").isPresent();
        String host = hostName(request.header("Host").orElse(""));
        if (passedOn) {
            boolean safe = proxy.contains(peer)
                    && request.header("X-Forwarded-Proto")
                            .map(scheme -> scheme.equalsIgnoreCase("https"))
                            .orElse(false)
                    && host.equalsIgnoreCase(base.getHost());
            return safe
                    ? Optional.of(new StaffLine(forwarded.map(StaffLine::last).orElse(peer), true))
                    : Optional.empty();
        }
        // a page elsewhere may have its own name lead to this computer: the name must be this computer's too
        return isLoopback(peer) && THIS_COMPUTER.contains(host)
                ? Optional.of(new StaffLine(peer, false))
                : Optional.empty();
    }

    /// The hop that our own proxy saw; whatever stands before it the sender wrote.
    private static String last(String forwarded) {
        String last = forwarded.substring(forwarded.lastIndexOf(',') + 1).strip();
        return last.length() > 60 ? last.substring(0, 60) : last;
    }

    private static String plain(String address) {
        return address.replaceAll("^\\[|]$", "").replaceAll("%.*$", "");
    }

    private static String hostName(String host) {
        return host.replaceAll(":\\d+$", "").toLowerCase(Locale.ROOT);
    }

    private static boolean isLoopback(String address) {
        if (!LITERAL.matcher(address).matches()) {
            return false; // no name is looked up
        }
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException noAddress) {
            return false;
        }
    }
}
