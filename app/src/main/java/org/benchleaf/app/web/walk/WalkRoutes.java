package org.benchleaf.app.web.walk;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.content.Telling;

/// Every address of the crop walk.
public final class WalkRoutes {
    private WalkRoutes() {}

    /// @param telling what the one who asks is told of stock and prices
    public static List<Route> of(Benchleaf benchleaf, Function<Request, Telling> telling) {
        return Stream.of(
                        new WalkFiles(benchleaf).routes(),
                        new WalkData(benchleaf).routes(),
                        new SightingsApi(benchleaf).routes(),
                        new SightingPages(benchleaf).routes(),
                        new BulletinPages(benchleaf, telling).routes())
                .flatMap(List::stream)
                .toList();
    }
}
