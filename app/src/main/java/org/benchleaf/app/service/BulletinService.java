package org.benchleaf.app.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.walk.Bulletin;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.render.page.Photo;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// Makes bulletins of what was seen: proposes reasons, and sets a stored bulletin with the names,
/// counts and prices of this moment.
public final class BulletinService {
    private final Benchleaf benchleaf;
    private final BulletinReasons reasons;

    public BulletinService(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.reasons = new BulletinReasons(benchleaf.wording());
    }

    /// The reason proposed for a sighting; empty when the catalog does not know the plant.
    public String propose(Sighting seen) {
        Optional<PlantRecord> plant = benchleaf.catalog().plant(seen.plant());
        return plant.map(known -> reasons.propose(
                        seen, known, size(seen), new Relatives(benchleaf.nameBook()).of(known), benchleaf.today()))
                .orElse("");
    }

    private Optional<StockSize> size(Sighting seen) {
        PlantStock stock = benchleaf
                .catalog()
                .stock(List.of(seen.plant()))
                .getOrDefault(seen.plant(), PlantStock.none(seen.plant()));
        return stock.lots().stream()
                .filter(lot -> seen.lot().equals(Optional.of(lot.lot())))
                .map(LotRecord::item)
                .flatMap(item -> stock.items().stream().filter(one -> one.key().equals(item)))
                .map(ItemRecord::size)
                .findFirst();
    }

    /// A bulletin as it is shown now. A plant that the catalog does not know any more, or that is
    /// retired, is left out; one seen twice stands where it stands first.
    public org.benchleaf.render.page.Bulletin page(Bulletin bulletin) {
        List<PlantRecord> plants = new ArrayList<>();
        List<String> why = new ArrayList<>();
        List<Optional<Photo>> photos = new ArrayList<>();
        List<PlantKey> known = new ArrayList<>();
        for (Bulletin.Line line : bulletin.lines()) {
            Optional<Sighting> seen =
                    benchleaf.walks().sighting(line.sighting()).map(NotedSighting::sighting);
            Optional<PlantRecord> plant = seen.map(Sighting::plant)
                    .filter(key -> !known.contains(key))
                    .flatMap(benchleaf.catalog()::plant)
                    .filter(one -> !one.retired());
            if (plant.isPresent()) {
                known.add(plant.get().key());
                plants.add(plant.get());
                why.add(line.reason());
                photos.add(seen.flatMap(Sighting::photo).map(file -> new Photo(file, "", "")));
            }
        }
        LocalDate monday = bulletin.week().monday();
        return withPhotos(
                benchleaf
                        .documents(benchleaf.style())
                        .assembler()
                        .bulletin(plants, why, monday, monday.plusDays(6), benchleaf.now()),
                photos);
    }

    /// What was photographed on the walk stands before the catalog's photograph: it is how the plant
    /// looks now.
    private org.benchleaf.render.page.Bulletin withPhotos(
            org.benchleaf.render.page.Bulletin page, List<Optional<Photo>> photos) {
        List<org.benchleaf.render.page.Bulletin.Pick> picks = new ArrayList<>();
        page.lead().ifPresent(picks::add);
        picks.addAll(page.others());
        for (int at = 0; at < picks.size(); at++) {
            var pick = picks.get(at);
            picks.set(
                    at,
                    new org.benchleaf.render.page.Bulletin.Pick(
                            pick.title(),
                            pick.reason(),
                            pick.year(),
                            pick.items(),
                            pick.cautions(),
                            pick.link(),
                            photos.get(at).or(pick::photo)));
        }
        return new org.benchleaf.render.page.Bulletin(
                page.from(),
                page.to(),
                picks.stream().findFirst(),
                picks.subList(Math.min(1, picks.size()), picks.size()),
                page.items(),
                page.shop());
    }

    /// Lines that somebody chose, and behind them what else was seen lately, with the reasons proposed.
    public List<Bulletin.Line> filled(List<Bulletin.Line> chosen, List<NotedSighting> lately) {
        List<PlantKey> known = new ArrayList<>();
        for (Bulletin.Line line : chosen) {
            benchleaf
                    .walks()
                    .sighting(line.sighting())
                    .ifPresent(noted -> known.add(noted.sighting().plant()));
        }
        List<Bulletin.Line> lines = new ArrayList<>(chosen);
        choices(lately).stream()
                .map(NotedSighting::sighting)
                .filter(seen -> !known.contains(seen.plant()))
                .filter(seen -> benchleaf
                        .catalog()
                        .plant(seen.plant())
                        .filter(plant -> !plant.retired())
                        .isPresent())
                .forEach(seen -> lines.add(new Bulletin.Line(seen.key(), propose(seen))));
        return lines;
    }

    /// What was seen lately, one a plant: the newest that is not in conflict.
    public List<NotedSighting> choices(List<NotedSighting> lately) {
        Map<PlantKey, NotedSighting> newest = new java.util.LinkedHashMap<>();
        lately.stream()
                .filter(noted -> !noted.isInConflict())
                .forEach(noted -> newest.putIfAbsent(noted.sighting().plant(), noted));
        return List.copyOf(newest.values());
    }
}
