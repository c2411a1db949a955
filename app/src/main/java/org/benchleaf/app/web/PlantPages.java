package org.benchleaf.app.web;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PageLinker;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.PageLinks;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Shipment;

/// The live page of a plant. Facts and stock are read from the catalog, never from the index: a page
/// promises only what is there now.
final class PlantPages {
    private final Benchleaf benchleaf;
    private final PublicView view;
    private final WebPages pages;
    private final Supplier<PageLinker> links;
    private final NeedPages needs;
    private final PageCache cache;

    PlantPages(Benchleaf benchleaf, WebPages pages, NeedPages needs, PageCache cache) {
        this.cache = cache;
        this.benchleaf = benchleaf;
        this.view = new PublicView(benchleaf);
        this.pages = pages;
        this.links = benchleaf::pageLinks;
        this.needs = needs;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/p/{key}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::page),
                Route.get("/find", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::find),
                Route.get("/photo/{file}", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::photograph),
                Route.get("/01/{gtin}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::traded),
                Route.get("/01/{gtin}/10/{lot}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::traded),
                Route.get("/logo", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::logo));
    }

    /// `/p/KEY` or `/p/KEY-3`: the item's page is its plant's, which lists every size.
    private Reply page(Request request) {
        String text = request.part("key");
        Optional<PlantKey> key = ItemKey.read(text)
                .toOptional()
                .map(ItemKey::plant)
                .or(() -> PlantKey.read(text).toOptional());
        return cache.page(
                request,
                view.telling(request),
                () -> key.flatMap(benchleaf.catalog()::plant)
                        .map(plant -> page(plant, request))
                        .orElseGet(Reply::missing));
    }

    private Reply page(PlantRecord plant, Request request) {
        PlantStock stock =
                benchleaf.catalog().stock(List.of(plant.key())).getOrDefault(plant.key(), PlantStock.none(plant.key()));
        var sheet = benchleaf.sheets().sheet(plant, stock, benchleaf.now(), true);
        var meta = new ProductData(view).meta(sheet, plant.retired(), view.telling(request));
        return Reply.page(pages.plantPage(sheet, links(plant, stock), meta, view.style(request)));
    }

    /// What takes the plant's place while it is gone, and its partners. The page opens without them when the
    /// index cannot be read.
    private PageLinks links(PlantRecord plant, PlantStock stock) {
        try {
            Optional<Shipment> home = benchleaf
                    .settings()
                    .place()
                    .map(place -> new Shipment(place, benchleaf.today(), Optional.of(place)));
            return links.get().of(plant, stock, home, YearWeek.of(benchleaf.today()));
        } catch (UncheckedIOException noIndex) {
            return PageLinks.NONE;
        }
    }

    /// `/find?q=WORDS`: plants for a need.
    private Reply find(Request request) {
        return cache.page(
                request,
                view.telling(request),
                () -> Reply.page(pages.needPage(needs.answer(request), view.style(request))));
    }

    /// `/01/GTIN` or `/01/GTIN/10/LOT`: a code that says a trade number (GS1 Digital Link) leads to the plant's page.
    private Reply traded(Request request) {
        return Gtin.read(request.part("gtin"))
                .toOptional()
                .flatMap(benchleaf.catalog()::itemOf)
                .map(item -> Reply.found(
                        LiveLink.of(benchleaf.settings().base(), item).path()))
                .orElseGet(Reply::missing);
    }

    /// `/logo`: what stands beside the shop's name.
    private Reply logo(Request request) {
        return benchleaf
                .logo()
                .logoIfThere()
                .map(logo -> Reply.of("image/png", logo.png()))
                .orElseGet(Reply::missing);
    }

    /// `/photo/FILE`: a photograph that a plant's page shows.
    private Reply photograph(Request request) {
        return pages.photograph(request.part("file"))
                .map(jpeg -> Reply.of("image/jpeg", jpeg))
                .orElseGet(Reply::missing);
    }
}
