package org.benchleaf.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.AvailabilityBook;
import org.benchleaf.app.service.NameLookup;
import org.benchleaf.app.service.PlantDirectory;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Handler;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;

/// What programs may read, described in `openapi.json`. Strangers are told what the pages tell them; a program with a
/// token is told everything.
final class Api {
    private static final int LONGEST = 500;
    private static final int MOST = 100;
    private static final int USUAL = 20;
    private static final int FARTHEST = 1000;
    private static final int SUBSTITUTES = 5;

    private final Benchleaf benchleaf;
    private final AvailabilityBook book;
    private final PlantDirectory directory;
    private final NeedPages needs;
    private final ApiData data;
    private final Feed feed;
    private final PublicView view;

    Api(Benchleaf benchleaf, AvailabilityBook book, PlantDirectory directory, NeedPages needs) {
        this.benchleaf = benchleaf;
        this.book = book;
        this.directory = directory;
        this.needs = needs;
        this.data = new ApiData(benchleaf);
        this.feed = new Feed(benchleaf);
        this.view = new PublicView(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                read("/api/v1/openapi.json", this::description),
                read("/api/v1/plants", this::plants),
                read("/api/v1/plants/{key}", this::plant),
                read("/api/v1/plants/{key}/substitutes", this::substitutes),
                read("/api/v1/need", this::need),
                read("/api/v1/names", this::names),
                read("/api/v1/available", this::available));
    }

    private static Route read(String path, Handler handler) {
        return Route.get(path, Access.EVERYONE, Keeping.ASK_FIRST, Headers.OPEN, handler);
    }

    private Reply description(Request request) {
        try (InputStream file = Objects.requireNonNull(Api.class.getResourceAsStream("openapi.json"))) {
            return Reply.of("application/json", file.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Reply plants(Request request) {
        List<PlantKey> all = directory.keys();
        int skip = Math.clamp(number(request, "skip", 0), 0, all.size());
        List<PlantKey> keys = all.subList(skip, Math.min(all.size(), skip + limit(request)));
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("total", all.size());
        answer.put(
                "plants",
                benchleaf.catalog().plants(keys).values().stream()
                        .map(data::brief)
                        .toList());
        return Json.reply(answer);
    }

    private Optional<PlantRecord> asked(Request request) {
        return PlantKey.read(request.part("key")).toOptional().flatMap(benchleaf.catalog()::plant);
    }

    private Reply plant(Request request) {
        return asked(request)
                .map(plant -> Json.reply(data.whole(plant, view.telling(request))))
                .orElseGet(Reply::missing);
    }

    private Reply substitutes(Request request) {
        Optional<PlantRecord> plant = asked(request);
        if (plant.isEmpty()) {
            return Reply.missing();
        }
        var answer = benchleaf
                .substitutes()
                .find(new SubstituteQuery(
                        plant.get(), Purpose.NOT_SAID, Demand.ANY, Optional.empty(), List.of(), week(), SUBSTITUTES));
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("plant", data.brief(plant.get()));
        told.put(
                "substitutes",
                answer.best().stream()
                        .map(one -> data.substitute(one, view.telling(request)))
                        .toList());
        return Json.reply(told);
    }

    private Reply need(Request request) {
        NeedReading read =
                new AskedPrices(view.telling(request)).of(needs.reader().read(text(request), benchleaf.today()));
        int skip = Math.clamp(number(request, "skip", 0), 0, FARTHEST);
        Map<String, Object> told = new LinkedHashMap<>(data.read(read));
        if (read.need().wishes().isEmpty()) {
            told.put("total", 0);
            told.put("plants", List.of());
            return Json.reply(told);
        }
        var answer = benchleaf.needSearch().answer(new NeedQuery(read.need(), "", week(), skip, limit(request)));
        told.put("total", answer.total());
        told.put("meet_all", answer.meetAll());
        told.put(
                "plants",
                answer.matches().stream()
                        .map(match -> data.match(match, view.telling(request)))
                        .toList());
        return Json.reply(told);
    }

    private Reply names(Request request) {
        String typed = text(request);
        var found = typed.isEmpty()
                ? List.<NameLookup.Found>of()
                : new NameLookup(benchleaf.catalog(), benchleaf.names())
                        .ask(typed, limit(request))
                        .found();
        return Json.reply(Map.of("plants", found.stream().map(data::named).toList()));
    }

    private Reply available(Request request) {
        return Json.reply(feed.json(book.now(week()), view.telling(request)));
    }

    private YearWeek week() {
        return YearWeek.of(benchleaf.today());
    }

    private static String text(Request request) {
        String text = request.query("q").orElse("").strip();
        return text.substring(0, Math.min(LONGEST, text.length()));
    }

    private static int limit(Request request) {
        return Math.clamp(number(request, "limit", USUAL), 1, MOST);
    }

    private static int number(Request request, String name, int usual) {
        try {
            return request.query(name).map(Integer::parseInt).orElse(usual);
        } catch (NumberFormatException typed) {
            return usual;
        }
    }
}
