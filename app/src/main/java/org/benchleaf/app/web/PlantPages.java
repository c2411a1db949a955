package org.benchleaf.app.web;

import io.javalin.http.Context;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PageLinker;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
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
    private final Wording wording;
    private final PlantList list;
    private final WebPages pages;
    private final Supplier<PageLinker> links;
    private final NeedPages needs;

    PlantPages(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
        this.list = new PlantList(benchleaf, wording);
        this.pages = benchleaf.webPages();
        this.links = benchleaf::pageLinks;
        this.needs = new NeedPages(benchleaf);
    }

    /// `/p/KEY` or `/p/KEY-3`: the item's page is its plant's, which lists every size.
    void page(Context context) {
        String text = context.pathParam("key");
        Optional<PlantKey> key = ItemKey.read(text)
                .toOptional()
                .map(ItemKey::plant)
                .or(() -> PlantKey.read(text).toOptional());
        Optional<PlantRecord> plant = key.flatMap(benchleaf.catalog()::plant);
        if (plant.isEmpty()) {
            context.status(404);
            return;
        }
        PlantStock stock = benchleaf
                .catalog()
                .stock(List.of(plant.get().key()))
                .getOrDefault(plant.get().key(), PlantStock.none(plant.get().key()));
        var sheet = benchleaf.sheets().sheet(plant.get(), stock, benchleaf.now(), true);
        send(context, pages.plantPage(sheet, links(plant.get(), stock), benchleaf.style()));
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
    void list(Context context) {
        send(context, list.page());
    }

    /// `/find?q=WORDS`: plants for a need.
    void find(Context context) {
        send(context, pages.needPage(needs.answer(context), benchleaf.style()));
    }

    /// `/photo/FILE`: a photograph that a plant's page shows.
    void photograph(Context context) {
        pages.photograph(context.pathParam("file"))
                .ifPresentOrElse(jpeg -> send(context, jpeg, "image/jpeg", "max-age=3600"), () -> context.status(404));
    }

    void notFound(Context context) {
        String text = wording.text("web.not-found", Map.of("path", context.path()));
        context.html(MessagePage.of(benchleaf.settings().shopName(), text));
    }

    /// Pages change with every sale: caches keep them, but ask first whether they are still true.
    private static void send(Context context, String page) {
        send(context, page.getBytes(StandardCharsets.UTF_8), "text/html; charset=utf-8", "no-cache");
    }

    private static void send(Context context, byte[] content, String type, String caching) {
        String tag = "\"" + digest(content) + "\"";
        context.header("ETag", tag);
        context.header("Cache-Control", caching);
        if (tag.equals(context.header("If-None-Match"))) {
            context.status(304);
        } else {
            context.contentType(type).result(content);
        }
    }

    private static String digest(byte[] content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(hash, 0, 16);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
