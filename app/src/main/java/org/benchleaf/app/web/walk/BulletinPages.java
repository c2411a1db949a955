package org.benchleaf.app.web.walk;

import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.BulletinService;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.walk.Bulletin;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.content.Telling;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.WalkPages;
import org.benchleaf.render.page.BulletinDesk;
import org.benchleaf.render.page.SeenLine;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.YearWeek;

/// The week's bulletin: made by staff, read by everybody.
final class BulletinPages {
    private static final int LONGEST = 300;
    /// Behind all that have a number.
    private static final int LAST = 1_000;

    private final Benchleaf benchleaf;
    private final BulletinService service;
    private final WalkPages pages;
    private final SeenWords words;
    private final Function<Request, Telling> telling;

    BulletinPages(Benchleaf benchleaf, Function<Request, Telling> telling) {
        this.benchleaf = benchleaf;
        this.telling = telling;
        this.service = new BulletinService(benchleaf);
        this.pages = WalkPages.using(benchleaf.content());
        this.words = new SeenWords(benchleaf);
    }

    List<Route> routes() {
        Access editor = new Access.SignedIn(Right.WALK);
        return List.of(
                Route.get("/bulletin", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::newest),
                Route.get("/bulletin/{week}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::week),
                Route.get("/bulletin/{week}/print.pdf", Access.EVERYONE, Keeping.ASK_FIRST, Headers.FILE, this::print),
                Route.get("/bulletin-desk", editor, Keeping.NEVER, Headers.PAGE, this::desk),
                Route.post("/bulletin-desk", editor, Headers.PAGE, this::save).upTo(1024 * 1024L));
    }

    private Reply newest(Request request) {
        return benchleaf.bulletins().published(1).stream()
                .findFirst()
                .flatMap(benchleaf.bulletins()::find)
                .map(bulletin -> shown(bulletin, request))
                .orElseGet(() -> Reply.page(pages.bulletin(
                        service.page(new Bulletin(thisWeek(), 0, "", List.of(), "", Optional.empty())),
                        benchleaf.wording().text("bulletin.web.none"),
                        "/",
                        benchleaf.wording())));
    }

    private Reply week(Request request) {
        return published(request).map(bulletin -> shown(bulletin, request)).orElseGet(Reply::missing);
    }

    private Optional<Bulletin> published(Request request) {
        return YearWeek.read(request.part("week"))
                .toOptional()
                .flatMap(benchleaf.bulletins()::find)
                .filter(Bulletin::isPublished);
    }

    private Reply shown(Bulletin bulletin, Request request) {
        Telling told = telling.apply(request);
        return Reply.page(pages.bulletin(
                service.page(bulletin),
                bulletin.greeting(),
                told.equals(Telling.ALL) ? "/bulletin/" + bulletin.week() + "/print.pdf" : "",
                benchleaf.wording().telling(told)));
    }

    /// Paper says what the shop's own people see, so it is handed out only to whom all of it is told.
    private Reply print(Request request) {
        return published(request)
                .filter(bulletin -> telling.apply(request).equals(Telling.ALL))
                .map(bulletin -> {
                    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
                    benchleaf.printer().bulletin(service.page(bulletin), SheetFormat.LETTER, benchleaf.style(), pdf);
                    return Reply.of("application/pdf", pdf.toByteArray());
                })
                .orElseGet(Reply::missing);
    }

    private YearWeek thisWeek() {
        return YearWeek.of(benchleaf.today());
    }

    private Reply desk(Request request) {
        YearWeek week = request.query("week")
                .flatMap(text -> YearWeek.read(text).toOptional())
                .orElseGet(this::thisWeek);
        return desk(request, stored(week), "");
    }

    private Bulletin stored(YearWeek week) {
        return benchleaf
                .bulletins()
                .find(week)
                .orElseGet(() -> new Bulletin(week, 0, "", List.of(), "", Optional.empty()));
    }

    private Reply desk(Request request, Bulletin bulletin, String trouble) {
        BulletinDesk page = new BulletinDesk(
                benchleaf.sheets().shop(),
                bulletin.week().toString(),
                benchleaf.wording().sentence(benchleaf.wording().week(bulletin.week())),
                bulletin.version(),
                bulletin.greeting(),
                bulletin.isPublished(),
                choices(bulletin),
                trouble,
                request.who().formToken());
        return Reply.page(pages.desk(page, benchleaf.wording()));
    }

    /// Those it tells of in their order, then what else was seen lately.
    private List<BulletinDesk.Choice> choices(Bulletin bulletin) {
        List<NotedSighting> all = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        Set<String> chosen = new HashSet<>();
        for (Bulletin.Line line : bulletin.lines()) {
            benchleaf.walks().sighting(line.sighting()).ifPresent(noted -> {
                chosen.add(line.sighting());
                all.add(noted);
                reasons.add(line.reason());
            });
        }
        for (NotedSighting noted : service.choices(SightingPages.lately(benchleaf))) {
            if (!chosen.contains(noted.sighting().key())) {
                all.add(noted);
                reasons.add(service.propose(noted.sighting()));
            }
        }
        List<SeenLine> lines = words.lines(all);
        List<BulletinDesk.Choice> choices = new ArrayList<>();
        for (int at = 0; at < lines.size(); at++) {
            choices.add(new BulletinDesk.Choice(lines.get(at), at < chosen.size() ? at + 1 : 0, reasons.get(at)));
        }
        return choices;
    }

    private Reply save(Request request) {
        Optional<YearWeek> week =
                request.form("week").flatMap(text -> YearWeek.read(text).toOptional());
        Optional<Integer> version = request.form("version").flatMap(BulletinPages::number);
        if (week.isEmpty() || version.isEmpty()) {
            return Reply.status(400);
        }
        boolean publish = request.form("publish").filter("yes"::equals).isPresent();
        Optional<Instant> published = stored(week.get())
                .publishedAt()
                .or(() -> publish
                        ? Optional.of(ZonedDateTime.of(benchleaf.now(), benchleaf.zone())
                                .toInstant())
                        : Optional.empty());
        Bulletin wanted = new Bulletin(
                week.get(),
                version.get(),
                line(request, "greeting"),
                lines(request),
                request.who().name(),
                published);
        Reading<Bulletin> saved = benchleaf.bulletins().save(wanted);
        return switch (saved) {
            case Reading.Read<Bulletin>(Bulletin bulletin) ->
                Reply.seeOther(publish ? "/bulletin/" + bulletin.week() : "/bulletin-desk?week=" + bulletin.week());
            // what was typed is kept on the page, with the version it is told to open anew
            case Reading.Refused<Bulletin>(Problem problem) ->
                desk(request, wanted, benchleaf.wording().problem(problem)).withStatus(409);
        };
    }

    private static List<Bulletin.Line> lines(Request request) {
        return request.forms("in").stream()
                .distinct()
                .sorted(Comparator.comparing(key -> request.form("place-" + key)
                        .flatMap(BulletinPages::number)
                        .orElse(LAST)))
                .map(key -> new Bulletin.Line(key, line(request, "why-" + key)))
                .toList();
    }

    /// One line, whatever was pasted.
    private static String line(Request request, String field) {
        String text = request.form(field).orElse("").replaceAll("\\s+", " ").strip();
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }

    private static Optional<Integer> number(String text) {
        String digits = text.strip();
        return digits.matches("\\d{1,6}") ? Optional.of(Integer.valueOf(digits)) : Optional.empty();
    }
}
