package org.benchleaf.app.web.walk;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Settlement;
import org.benchleaf.render.WalkPages;
import org.benchleaf.render.page.SightingsPage;

/// What was seen on walks, for the staff: conflicts are settled here without a telephone and without a
/// script.
final class SightingPages {
    /// How far back staff looks.
    static final Duration LATELY = Duration.ofDays(14);

    /// More than are seen in two weeks of walks.
    static final int MOST = 500;

    private static final String LOT = "lot ";

    private final Benchleaf benchleaf;
    private final WalkPages pages;
    private final SeenWords words;

    SightingPages(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.pages = WalkPages.using(benchleaf.content());
        this.words = new SeenWords(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/sightings", new Access.SignedIn(Right.LOOK), Keeping.NEVER, Headers.PAGE, this::page),
                Route.post("/sightings/settle", new Access.SignedIn(Right.WALK), Headers.PAGE, this::settle));
    }

    /// What was seen lately, the newest first.
    static List<NotedSighting> lately(Benchleaf benchleaf) {
        return benchleaf
                .walks()
                .seenSince(
                        ZonedDateTime.of(benchleaf.now(), benchleaf.zone())
                                .minus(LATELY)
                                .toInstant(),
                        MOST);
    }

    private Reply page(Request request) {
        SightingsPage page = new SightingsPage(
                benchleaf.sheets().shop(),
                words.lines(benchleaf.walks().conflicts()),
                words.lines(lately(benchleaf).stream()
                        .filter(noted -> !noted.isInConflict())
                        .toList()),
                request.who().formToken());
        return Reply.page(pages.sightings(page, benchleaf.wording()));
    }

    private Reply settle(Request request) {
        Optional<Settlement> how = request.form("how").flatMap(SightingPages::settlement);
        if (how.isEmpty()) {
            return Reply.status(400);
        }
        benchleaf
                .walks()
                .settle(request.form("key").orElse(""), how.get(), request.who().name());
        benchleaf.afterChange();
        return Reply.seeOther("/sightings");
    }

    private static Optional<Settlement> settlement(String how) {
        return switch (how) {
            case "AS_SEEN" -> Optional.of(new Settlement.AsSeen());
            case "NOTE_ONLY" -> Optional.of(new Settlement.NoteOnly());
            default ->
                how.startsWith(LOT) ? Optional.of(new Settlement.AtLot(how.substring(LOT.length()))) : Optional.empty();
        };
    }
}
