package org.benchleaf.app.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PlantDirectory;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.shared.code.LiveLink;

/// What searchers ask first: which pages there are (sitemaps.org protocol, 50,000 addresses a file) and which are
/// endless (RFC 9309).
final class SitePages {
    private static final int MOST = 50_000;
    private static final String XML = "application/xml; charset=utf-8";

    private final Benchleaf benchleaf;
    private final PublicView view;
    private final PlantDirectory directory;

    SitePages(Benchleaf benchleaf, PlantDirectory directory) {
        this.directory = directory;
        this.benchleaf = benchleaf;
        this.view = new PublicView(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/robots.txt", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::robots),
                Route.get("/sitemap.xml", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::sitemap),
                Route.get("/sitemap/{part}", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::part));
    }

    private Reply robots(Request request) {
        String text = """
            User-agent: *
            Disallow: /find?
            Disallow: /compare?
            Disallow: /desk
            Disallow: /walk
            Sitemap: %s
            """.formatted(view.address("/sitemap.xml"));
        return Reply.of("text/plain; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
    }

    private Reply sitemap(Request request) {
        List<String> all = addresses();
        if (all.size() <= MOST) {
            return Reply.of(XML, urls(all));
        }
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<sitemapindex xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\">\n");
        for (int part = 1; (part - 1) * MOST < all.size(); part++) {
            text.append("<sitemap><loc>")
                    .append(Markup.escaped(view.address("/sitemap/" + part)))
                    .append("</loc></sitemap>\n");
        }
        return Reply.of(XML, text.append("</sitemapindex>\n").toString().getBytes(StandardCharsets.UTF_8));
    }

    private Reply part(Request request) {
        List<String> all = addresses();
        String text = request.part("part");
        int part = text.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(text) : 0;
        if (part == 0 || (part - 1) * MOST >= all.size()) {
            return Reply.missing();
        }
        return Reply.of(XML, urls(all.subList((part - 1) * MOST, Math.min(all.size(), part * MOST))));
    }

    private static byte[] urls(List<String> addresses) {
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<urlset xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\">\n");
        addresses.forEach(address ->
                text.append("<url><loc>").append(Markup.escaped(address)).append("</loc></url>\n"));
        return text.append("</urlset>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private List<String> addresses() {
        return Stream.concat(
                        Stream.of(view.address("/"), view.address("/available")),
                        directory.keys().stream()
                                .map(key -> LiveLink.of(benchleaf.settings().base(), key)
                                        .toString()))
                .toList();
    }
}
