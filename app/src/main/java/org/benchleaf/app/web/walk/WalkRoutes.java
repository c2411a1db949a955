package org.benchleaf.app.web.walk;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Route;

/// Every address of the crop walk.
public final class WalkRoutes {
    private WalkRoutes() {}

    public static List<Route> of(Benchleaf benchleaf) {
        return Stream.of(
                        new WalkFiles(benchleaf).routes(),
                        new WalkData(benchleaf).routes(),
                        new SightingsApi(benchleaf).routes(),
                        new SightingPages(benchleaf).routes(),
                        new BulletinPages(benchleaf).routes())
                .flatMap(List::stream)
                .toList();
    }
}
