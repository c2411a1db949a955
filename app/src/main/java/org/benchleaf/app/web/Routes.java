package org.benchleaf.app.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.AvailabilityBook;
import org.benchleaf.app.service.PlantDirectory;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Guard;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.app.web.route.RouteTable;
import org.benchleaf.app.web.staff.StaffGuard;
import org.benchleaf.app.web.staff.StaffRoutes;
import org.benchleaf.app.web.walk.WalkRoutes;
import org.benchleaf.render.WebPages;

/// Every address of the server, in one list; `docs/routes.md` prints it. A group of pages adds one line.
public final class Routes {
    private Routes() {}

    /// The table of a workspace.
    public static RouteTable of(Benchleaf benchleaf) {
        WebPages pages = benchleaf.webPages();
        AvailabilityBook book = new AvailabilityBook(benchleaf.catalog(), benchleaf.wording());
        PlantDirectory directory = new PlantDirectory(benchleaf.catalog());
        PageCache cache = new PageCache(benchleaf);
        NeedPages needs = new NeedPages(benchleaf);
        return new RouteTable(Stream.of(
                        new AvailabilityPages(benchleaf, pages, book, cache).routes(),
                        new PlantPages(benchleaf, pages, needs, cache).routes(),
                        new ComparePages(benchleaf, pages).routes(),
                        new SitePages(benchleaf, directory).routes(),
                        new Api(benchleaf, book, directory, needs).routes(),
                        WalkRoutes.of(benchleaf, new PublicView(benchleaf)::telling),
                        StaffRoutes.of(benchleaf),
                        List.of(health(benchleaf)))
                .flatMap(List::stream)
                .toList());
    }

    /// Who is known to this server.
    static Guard guard(Benchleaf benchleaf) {
        return new StaffGuard(benchleaf);
    }

    /// For the one who watches the server: it answers, and how far its catalog is.
    private static Route health(Benchleaf benchleaf) {
        return Route.get("/health", Access.EVERYONE, Keeping.NEVER, Headers.FILE, request -> {
            String text = "ok " + benchleaf.catalog().revision().number();
            return Reply.of("text/plain; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
        });
    }
}
