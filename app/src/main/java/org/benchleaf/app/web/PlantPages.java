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
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Shipment;

/// The live page of a plant. Facts and stock are read from the catalog, never from the index: a page
/// promises only what is there now.
final class PlantPages {
    private final Benchleaf benchleaf;
    private final PlantList list;
    private final WebPages pages;
    private final Supplier<PageLinker> links;
    private final NeedPages needs;

    PlantPages(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.list = new PlantList(benchleaf, benchleaf.wording());
        this.pages = benchleaf.webPages();
        this.links = benchleaf::pageLinks;
        this.needs = new NeedPages(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::list),
                Route.get("/p/{key}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::page),
                Route.get("/find", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::find),
                Route.get("/photo/{file}", Access.EVERYONE, Keeping.AN_HOUR, Headers.FILE, this::photograph));
    }

    /// `/p/KEY` or `/p/KEY-3`: the item's page is its plant's, which lists every size.
    private Reply page(Request request) {
        String text = request.part("key");
        Optional<PlantKey> key = ItemKey.read(text)
                .toOptional()
                .map(ItemKey::plant)
                .or(() -> PlantKey.read(text).toOptional());
        return key.flatMap(benchleaf.catalog()::plant).map(this::page).orElseGet(Reply::missing);
    }

    private Reply page(PlantRecord plant) {
        PlantStock stock =
                benchleaf.catalog().stock(List.of(plant.key())).getOrDefault(plant.key(), PlantStock.none(plant.key()));
        var sheet = benchleaf.sheets().sheet(plant, stock, benchleaf.now(), true);
        return Reply.page(pages.plantPage(sheet, links(plant, stock), benchleaf.style()));
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

    /// Everything that can be had now, by name.
    private Reply list(Request request) {
        return Reply.page(list.page());
    }

    /// `/find?q=WORDS`: plants for a need.
    private Reply find(Request request) {
        return Reply.page(pages.needPage(needs.answer(request), benchleaf.style()));
    }

    /// `/photo/FILE`: a photograph that a plant's page shows.
    private Reply photograph(Request request) {
        return pages.photograph(request.part("file"))
                .map(jpeg -> Reply.of("image/jpeg", jpeg))
                .orElseGet(Reply::missing);
    }
}
