package org.benchleaf.app.service;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.AvailabilityPage;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Availability;

/// What can be had, now or later, plant by plant by name. Kept, and brought up to date by what changed since: a sale
/// costs one plant, not the whole catalog.
public final class AvailabilityBook {
    /// Above so many changes reading everything is faster than plant by plant.
    private static final int MANY = 2000;

    private final CatalogView catalog;
    private final Wording words;
    private Optional<Book> last = Optional.empty();

    public AvailabilityBook(CatalogView catalog, Wording words) {
        this.catalog = catalog;
        this.words = words;
    }

    /// One state of it.
    ///
    /// @param asOf the moment at which holds were looked at
    /// @param lines by name
    public record Book(CatalogRevision revision, YearWeek week, Instant asOf, Map<Place, AvailabilityPage.Line> lines) {
        /// Plants of which some can be taken today.
        public long here() {
            return lines.values().stream().filter(AvailabilityPage.Line::isHere).count();
        }
    }

    /// Where a plant stands in the order of names.
    record Place(BotanicalName name, PlantKey key) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            int byName = name.compareTo(other.name);
            return byName != 0 ? byName : key.text().compareTo(other.key.text());
        }
    }

    /// The book as of now.
    public synchronized Book now(YearWeek week) {
        CatalogRevision revision = catalog.revision();
        Optional<Book> kept = last.filter(book -> book.week().equals(week));
        Book book;
        if (kept.isEmpty()) {
            book = all(week);
        } else {
            CatalogView.Freed freed = catalog.freedSince(kept.get().asOf());
            if (kept.get().revision().equals(revision) && freed.plants().isEmpty()) {
                return kept.get();
            }
            Set<PlantKey> changed = new LinkedHashSet<>(freed.plants());
            catalog.changesSince(kept.get().revision()).forEach(change -> changed.add(change.plant()));
            book = changed.size() > MANY ? all(week) : changed(kept.get(), changed, revision, freed.asOf());
        }
        last = Optional.of(book);
        return book;
    }

    private Book all(YearWeek week) {
        Instant asOf = catalog.now();
        Map<PlantKey, PlantStock> stock = new HashMap<>();
        CatalogRevision revision = catalog.forEachStock(one -> stock.put(one.plant(), one));
        Map<Place, AvailabilityPage.Line> lines = new TreeMap<>();
        catalog.forEachPlant(plant -> add(lines, plant, stock.get(plant.key()), week));
        return new Book(revision, week, asOf, lines);
    }

    private Book changed(Book from, Collection<PlantKey> changed, CatalogRevision revision, Instant asOf) {
        Map<Place, AvailabilityPage.Line> lines = new TreeMap<>(from.lines());
        lines.keySet().removeIf(place -> changed.contains(place.key()));
        Map<PlantKey, PlantStock> stock = catalog.stock(changed);
        catalog.plants(changed).values().stream()
                .filter(plant -> !plant.retired())
                .forEach(plant -> add(lines, plant, stock.get(plant.key()), from.week()));
        return new Book(revision, from.week(), asOf, lines);
    }

    private void add(
            Map<Place, AvailabilityPage.Line> lines,
            PlantRecord plant,
            @org.jspecify.annotations.Nullable PlantStock stock,
            YearWeek week) {
        if (stock == null) {
            return;
        }
        List<ItemLine> items = stock.items().stream()
                .map(item -> new ItemLine(
                        item.key(),
                        item.size(),
                        item.form(),
                        stock.availability(item.key(), week),
                        item.price(),
                        List.of()))
                .filter(line -> !(line.availability() instanceof Availability.SoldOut))
                .toList();
        if (!items.isEmpty()) {
            lines.put(
                    new Place(plant.name(), plant.key()),
                    new AvailabilityPage.Line(plant.name(), common(plant), plant.key(), items));
        }
    }

    /// A cultivar without a common name of its own is called as its taxon is.
    private String common(PlantRecord plant) {
        return plant.commonName(words.language())
                .or(() -> plant.taxon().flatMap(catalog::plant).flatMap(taxon -> taxon.commonName(words.language())))
                .orElse("");
    }
}
