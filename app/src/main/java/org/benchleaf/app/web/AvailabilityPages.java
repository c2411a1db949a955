package org.benchleaf.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.AvailabilityBook;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Handler;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.AvailabilityPage;
import org.benchleaf.shared.measure.YearWeek;

/// The front page, and what can be had: as a page, as a spreadsheet, for programs.
final class AvailabilityPages {
    private static final int PAGE = 100;

    private final Benchleaf benchleaf;
    private final PublicView view;
    private final WebPages pages;
    private final AvailabilityBook book;
    private final Feed feed;
    private final PageCache cache;

    AvailabilityPages(Benchleaf benchleaf, WebPages pages, AvailabilityBook book, PageCache cache) {
        this.cache = cache;
        this.benchleaf = benchleaf;
        this.view = new PublicView(benchleaf);
        this.pages = pages;
        this.book = book;
        this.feed = new Feed(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, kept(this::front)),
                Route.get("/available", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, kept(this::list)),
                Route.get("/available.csv", Access.EVERYONE, Keeping.ASK_FIRST, Headers.OPEN, kept(this::csv)),
                Route.get("/available.json", Access.EVERYONE, Keeping.ASK_FIRST, Headers.OPEN, kept(this::json)));
    }

    private Handler kept(Function<Request, Reply> make) {
        return request -> cache.page(request, view.telling(request), () -> make.apply(request));
    }

    private AvailabilityBook.Book now() {
        return book.now(YearWeek.of(benchleaf.today()));
    }

    private Reply front(Request request) {
        AvailabilityBook.Book now = now();
        return Reply.page(pages.frontPage(page(now, "", List.of(), "", ""), view.style(request)));
    }

    /// `/available?genus=Acer&skip=100`.
    private Reply list(Request request) {
        AvailabilityBook.Book now = now();
        String genus = request.query("genus").orElse("");
        List<AvailabilityPage.Line> all = now.lines().values().stream()
                .filter(line -> genus.isEmpty() || line.name().genus().equals(genus))
                .toList();
        if (!genus.isEmpty() && all.isEmpty()) {
            return Reply.missing();
        }
        int skip = Math.clamp(skip(request), 0, all.size());
        List<AvailabilityPage.Line> shown = all.stream().skip(skip).limit(PAGE).toList();
        String earlier = skip == 0 ? "" : path(genus, Math.max(0, skip - PAGE));
        String later = skip + PAGE < all.size() ? path(genus, skip + PAGE) : "";
        return Reply.page(pages.availabilityPage(page(now, genus, shown, earlier, later), view.style(request)));
    }

    private static int skip(Request request) {
        try {
            return Integer.parseInt(request.query("skip").orElse("0"));
        } catch (NumberFormatException typed) {
            return 0;
        }
    }

    private static String path(String genus, int skip) {
        String path = "/available?genus=" + Paths.encoded(genus);
        return skip == 0 ? path : path + "&skip=" + skip;
    }

    private AvailabilityPage page(
            AvailabilityBook.Book now, String genus, List<AvailabilityPage.Line> lines, String earlier, String later) {
        Map<String, Integer> genera = new LinkedHashMap<>();
        now.lines().values().forEach(line -> genera.merge(line.name().genus(), 1, Integer::sum));
        List<AvailabilityPage.Genus> links = new ArrayList<>();
        genera.forEach((name, plants) -> links.add(new AvailabilityPage.Genus(name, plants, path(name, 0))));
        return new AvailabilityPage(
                genus,
                benchleaf.now(),
                now.here(),
                now.lines().size(),
                links,
                lines,
                earlier,
                later,
                benchleaf.bulletins().published(1).isEmpty() ? "" : "/bulletin",
                view.shop());
    }

    private Reply csv(Request request) {
        return Reply.of("text/csv; charset=utf-8", feed.csv(now(), view.telling(request)))
                .download("available.csv");
    }

    private Reply json(Request request) {
        return Json.reply(feed.json(now(), view.telling(request)));
    }
}
