package org.benchleaf.app.web.route;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/// Every address of the server.
///
/// @throws IllegalArgumentException when two routes answer the same address
public record RouteTable(List<Route> routes) {
    public RouteTable {
        routes = List.copyOf(routes);
        Set<String> taken = new HashSet<>();
        for (Route route : routes) {
            String address = route.verb() + " " + route.path().replaceAll("\\{[a-z]+}", "{}");
            if (!taken.add(address)) {
                throw new IllegalArgumentException("two routes answer " + address);
            }
        }
    }

    /// The longest body that any route takes.
    long mostBytes() {
        return routes.stream().mapToLong(Route::mostBytes).max().orElse(0);
    }

    /// The table as it is printed for people, in Markdown.
    public String text() {
        return "| address | who may | changes | kept | headers | body up to |\n|---|---|---|---|---|---|\n"
                + routes.stream().map(RouteTable::row).collect(Collectors.joining());
    }

    private static String row(Route route) {
        return "| `%s %s` | %s | %s | %s | %s | %s |%n"
                .formatted(
                        route.verb(),
                        route.path(),
                        route.access().text(),
                        route.forgery().text(),
                        route.keeping().text(),
                        route.headers().text(),
                        route.mostBytes() == 0 ? "" : size(route.mostBytes()));
    }

    private static String size(long bytes) {
        return bytes < 1024 * 1024
                ? bytes / 1024 + " KiB"
                : String.format(Locale.ROOT, "%d MiB", bytes / (1024 * 1024));
    }
}
