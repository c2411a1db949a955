package org.benchleaf.app.web.walk;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.content.Wording;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.SeenLine;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthRange;

/// Sightings as staff reads them.
final class SeenWords {
    private final Benchleaf benchleaf;
    private final Wording wording;
    private final ConflictWords conflicts;

    SeenWords(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
        this.conflicts = new ConflictWords(wording, benchleaf.zone());
    }

    /// In their order, the catalog asked once for all.
    List<SeenLine> lines(List<NotedSighting> seen) {
        List<PlantKey> keys =
                seen.stream().map(noted -> noted.sighting().plant()).distinct().toList();
        Map<PlantKey, PlantRecord> plants = benchleaf.catalog().plants(keys);
        Map<PlantKey, PlantStock> stock = benchleaf.catalog().stock(keys);
        return seen.stream()
                .map(noted -> {
                    PlantKey key = noted.sighting().plant();
                    return line(
                            noted, Optional.ofNullable(plants.get(key)), stock.getOrDefault(key, PlantStock.none(key)));
                })
                .toList();
    }

    private SeenLine line(NotedSighting noted, Optional<PlantRecord> plant, PlantStock stock) {
        Sighting seen = noted.sighting();
        return new SeenLine(
                seen.key(),
                plant.map(PlantRecord::name),
                seen.plant().text(),
                wording.text(
                        "sightings.when",
                        Map.of(
                                "who",
                                seen.who(),
                                "when",
                                wording.time(LocalDateTime.ofInstant(seen.seenAt(), benchleaf.zone())))),
                row(seen, stock),
                what(seen),
                seen.photo().map(WebPages.PHOTO_PATH::concat),
                noted.standing() instanceof Standing.InConflict(Problem problem) ? conflicts.of(problem) : "",
                noted.isInConflict() ? otherRows(seen, stock) : List.of());
    }

    private String what(Sighting seen) {
        List<String> parts = new ArrayList<>();
        if (!seen.conditions().isEmpty()) {
            parts.add(wording.terms(seen.conditions()));
        }
        seen.count()
                .ifPresent(count -> parts.add(wording.text("sightings.count", Map.of("count", wording.count(count)))));
        seen.heightCm()
                .ifPresent(cm -> parts.add(
                        wording.text("sightings.height", Map.of("height", wording.length(new LengthRange(cm, cm))))));
        if (!seen.remark().isBlank()) {
            parts.add(seen.remark());
        }
        return String.join(wording.text("list.comma"), parts);
    }

    private String row(Sighting seen, PlantStock stock) {
        Optional<LotRecord> lot = seen.lot()
                .flatMap(number -> stock.lots().stream()
                        .filter(one -> one.lot().equals(number))
                        .findFirst());
        return lot.map(one -> row(one, stock))
                .orElseGet(() -> Stream.of(
                                seen.place(),
                                seen.lot()
                                        .map(number -> wording.text("sightings.lot", Map.of("lot", number)))
                                        .orElse(""))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(" · ")));
    }

    private String row(LotRecord lot, PlantStock stock) {
        String size = stock.items().stream()
                .filter(item -> item.key().equals(lot.item()))
                .map(this::size)
                .findFirst()
                .orElse("");
        return Stream.of(size, lot.place(), wording.text("sightings.lot", Map.of("lot", lot.lot())))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private String size(ItemRecord item) {
        return wording.size(item.size(), item.form());
    }

    private List<SeenLine.Row> otherRows(Sighting seen, PlantStock stock) {
        return stock.lots().stream()
                .filter(lot -> !seen.lot().equals(Optional.of(lot.lot())))
                .map(lot -> new SeenLine.Row(
                        lot.lot(), wording.text("sightings.other-row", Map.of("row", row(lot, stock)))))
                .toList();
    }
}
