package org.benchleaf.app.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.ComparePage;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.code.PlantKey;

/// `/compare?p=KEY&p=KEY&add=NAME`: up to four plants side by side. A name that is one plant's adds it at once.
final class ComparePages {
    private static final int CANDIDATES = 6;
    private static final int LONGEST = 120;

    private final Benchleaf benchleaf;
    private final WebPages pages;
    private final PublicView view;

    ComparePages(Benchleaf benchleaf, WebPages pages) {
        this.benchleaf = benchleaf;
        this.pages = pages;
        this.view = new PublicView(benchleaf);
    }

    List<Route> routes() {
        return List.of(Route.get("/compare", Access.EVERYONE, Keeping.ASK_FIRST, Headers.PAGE, this::compare));
    }

    private Reply compare(Request request) {
        List<PlantRecord> plants = new ArrayList<>(chosen(request));
        String typed = request.query("add").orElse("").strip();
        typed = typed.substring(0, Math.min(LONGEST, typed.length()));
        List<PlantRecord> meant = typed.isEmpty() ? List.of() : meant(typed);
        if (meant.size() == 1 && plants.size() < ComparePage.MOST) {
            if (!plants.contains(meant.getFirst())) {
                plants.add(meant.getFirst());
            }
            typed = "";
            meant = List.of();
        }
        return Reply.page(pages.comparePage(page(plants, typed, meant), view.style(request)));
    }

    private List<PlantRecord> chosen(Request request) {
        LinkedHashSet<PlantKey> keys = request.queries("p").stream()
                .flatMap(text -> PlantKey.read(text).toOptional().stream())
                .limit(ComparePage.MOST)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return List.copyOf(benchleaf.catalog().plants(keys).values());
    }

    /// The one plant of exactly that name, else those that it may be.
    private List<PlantRecord> meant(String typed) {
        List<PlantRecord> found = benchleaf.names().find(typed, CANDIDATES).stream()
                .flatMap(hit -> benchleaf.catalog().plant(hit.plant()).stream())
                .distinct()
                .toList();
        Optional<PlantRecord> same = found.stream()
                .filter(plant -> plant.name().toString().equalsIgnoreCase(typed))
                .findFirst();
        return same.map(List::of).orElse(found);
    }

    private ComparePage page(List<PlantRecord> plants, String typed, List<PlantRecord> meant) {
        List<String> keys = plants.stream().map(plant -> plant.key().text()).toList();
        Map<PlantKey, PlantStock> stock =
                benchleaf.catalog().stock(plants.stream().map(PlantRecord::key).toList());
        List<PlantSheet> sheets = plants.stream()
                .map(plant -> benchleaf
                        .sheets()
                        .sheet(plant, stock.getOrDefault(plant.key(), PlantStock.none(plant.key())), benchleaf.now()))
                .toList();
        return new ComparePage(
                keys.stream()
                        .map(key -> new ComparePage.Chosen(
                                key,
                                "/p/" + key,
                                path(keys.stream()
                                        .filter(other -> !other.equals(key))
                                        .toList())))
                        .toList(),
                sheets,
                typed,
                meant.stream()
                        .map(plant -> {
                            List<String> more = new ArrayList<>(keys);
                            more.add(plant.key().text());
                            return new ComparePage.Candidate(plant.name(), path(more));
                        })
                        .toList(),
                plants.size() < ComparePage.MOST,
                view.shop());
    }

    private static String path(List<String> keys) {
        return "/compare" + (keys.isEmpty() ? "" : "?p=" + String.join("&p=", keys));
    }
}
