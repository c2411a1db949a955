package org.benchleaf.app.web.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Identity;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.sound.SoundTable;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.stock.Condition;

/// What a telephone carries into the field: every plant by all its names, the rows it stands in, and
/// how names sound.
final class WalkData {
    private final Benchleaf benchleaf;
    private final Wording wording;

    WalkData(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
    }

    List<Route> routes() {
        Access walker = new Access.SignedIn(Right.WALK);
        return List.of(
                Route.get("/walk/plants.json", walker, Keeping.ASK_FIRST_PRIVATELY, Headers.FILE, this::plants),
                Route.get("/walk/me", walker, Keeping.NEVER, Headers.FILE, this::me));
    }

    /// Who sends, and what proves that it is sent by our own page.
    private Reply me(Request request) {
        Identity who = request.who();
        return WalkJson.reply(Map.of("name", who.name(), "token", who.formToken()));
    }

    private Reply plants(Request request) {
        return WalkJson.reply(data());
    }

    /// Plants stand in the order of names, as look-ups list them.
    Map<String, Object> data() {
        Map<PlantKey, PlantStock> stock = new HashMap<>();
        benchleaf.catalog().forEachStock(one -> stock.put(one.plant(), one));
        List<Named> names = new ArrayList<>();
        long revision = benchleaf
                .catalog()
                .forEachPlant(plant -> names.add(Named.of(plant)))
                .number();
        names.sort(Comparator.comparing(Named::order).thenComparing(Named::plant));
        return Map.of(
                "stamp",
                Long.toString(revision),
                "inches",
                wording.lengths() != LengthStyle.METRIC,
                "conditions",
                Arrays.stream(Condition.values())
                        .map(condition -> List.of(condition.name(), wording.term(condition)))
                        .toList(),
                "sounds",
                sounds(SoundTable.ofNames()),
                "plants",
                names.stream()
                        .map(named -> plant(named, stock.getOrDefault(named.plant(), PlantStock.none(named.plant()))))
                        .toList());
    }

    private static Map<String, Object> sounds(SoundTable table) {
        return Map.of(
                "rules",
                table.rules().stream()
                        .map(rule -> List.of(rule.spelling(), rule.place(), rule.sounds()))
                        .toList(),
                "sounds",
                table.sounds(),
                "change",
                table.change(),
                "missing",
                table.missing());
    }

    private Map<String, Object> plant(Named named, PlantStock stock) {
        Map<ItemKey, ItemRecord> items =
                stock.items().stream().collect(Collectors.toMap(ItemRecord::key, item -> item));
        return Map.of(
                "key",
                named.plant().text(),
                "names",
                named.names().stream()
                        .map(name -> name.kind().name().charAt(0) + " " + name.text())
                        .toList(),
                "rows",
                stock.lots().stream()
                        .flatMap(lot -> Optional.ofNullable(items.get(lot.item())).map(item -> row(lot, item)).stream())
                        .toList());
    }

    private Map<String, Object> row(LotRecord lot, ItemRecord item) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("lot", lot.lot());
        row.put("item", item.key().number());
        row.put("size", wording.size(item.size(), item.form()));
        row.put("place", lot.place());
        row.put("count", lot.count());
        return row;
    }
}
