package org.benchleaf.app.web.staff;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;

/// Plants by a key, or by a name however it is typed.
final class PlantSearch {
    private static final int MOST = 25;
    private static final int LONGEST = 120;

    private final Benchleaf benchleaf;
    private final Wording wording;

    PlantSearch(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
    }

    /// One plant in a list.
    ///
    /// @param name botanical
    /// @param common name; may be empty
    /// @param matched by which name it was found, when that is another one
    /// @param stock what there is now, one line
    public record Hit(
            PlantRecord record, String key, String name, String common, String matched, String stock, String path) {}

    List<Hit> find(String words) {
        String text = words.substring(0, Math.min(LONGEST, words.length())).strip();
        if (text.isEmpty()) {
            return List.of();
        }
        Optional<PlantRecord> byKey = PlantKey.read(text)
                .toOptional()
                .or(() -> ItemKey.read(text).toOptional().map(ItemKey::plant))
                .flatMap(benchleaf.catalog()::plant);
        if (byKey.isPresent()) {
            return List.of(hit(byKey.get()));
        }
        List<NameHit> hits = benchleaf.names().find(text, MOST);
        Map<PlantKey, PlantRecord> plants =
                benchleaf.catalog().plants(hits.stream().map(NameHit::plant).toList());
        Map<PlantKey, PlantStock> stocks = benchleaf.catalog().stock(plants.keySet());
        Map<PlantKey, Hit> found = new LinkedHashMap<>();
        for (NameHit hit : hits) {
            PlantRecord plant = plants.get(hit.plant());
            if (plant != null) {
                found.putIfAbsent(
                        plant.key(),
                        hit(plant, stocks.getOrDefault(plant.key(), PlantStock.none(plant.key())), hit.matched()));
            }
        }
        return new ArrayList<>(found.values());
    }

    PlantStock stock(PlantRecord plant) {
        return benchleaf.catalog().stock(List.of(plant.key())).getOrDefault(plant.key(), PlantStock.none(plant.key()));
    }

    Hit hit(PlantRecord plant) {
        return hit(plant, stock(plant), "");
    }

    private Hit hit(PlantRecord plant, PlantStock stock, String matched) {
        String name = plant.name().toString();
        String common = plant.commonName(wording.language()).orElse("");
        return new Hit(
                plant,
                plant.key().toString(),
                name,
                common,
                matched.equals(name) || matched.equals(common) ? "" : matched,
                line(stock),
                "/desk/plants/" + plant.key());
    }

    /// `#3: 60 now; #5: sold out`.
    String line(PlantStock stock) {
        YearWeek now = YearWeek.of(benchleaf.today());
        return String.join(
                "; ",
                stock.items().stream()
                        .map(item -> wording.size(item.size(), item.form()) + ": "
                                + wording.availability(stock.availability(item.key(), now)))
                        .toList());
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
