package org.benchleaf.search.substitute;

import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.plant;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.Plants;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.stock.StockSize;

/// A shop of six plants, the first of them sold out. Their facts are made up for tests, in the shape of the trade's.
final class SmallShop implements AutoCloseable {
    static final Demand FORTY = new Demand(40, StockSize.read("#3").toOptional(), Optional.empty(), true);

    private final InMemoryCatalogView catalog = new InMemoryCatalogView();
    private final PlantIndex index;

    private SmallShop(Path folder) {
        put(1, of("Itea", "virginica").withCultivar("Ruby"), shrub("90-150 cm", "5-9", "red"));
        put(2, of("Itea", "virginica").withCultivar("Rose"), shrub("90-150 cm", "5-9", "red"));
        put(3, of("Itea", "virginica").withCultivar("Small"), shrub("45-60 cm", "5-9", "red"));
        put(4, of("Fothergilla", "major"), shrub("120-180 cm", "4-8", "red"));
        put(5, of("Clethra", "alnifolia"), shrub("120-180 cm", "3-9", "yellow"));
        put(6, of("Acer", "rubrum"), facts("life_form", "tree", "height", "1200-1800 cm", "fall_color", "red"));
        for (int serial = 2; serial <= 6; serial++) {
            stock(serial, "#3, 100,, 20.00");
        }
        stock(1, "#3, 0,, 18.50");
        this.index = PlantIndex.open(folder, catalog);
    }

    static SmallShop open(Path folder) {
        return new SmallShop(folder);
    }

    void put(long serial, BotanicalName name, Facts facts) {
        catalog.put(plant(serial, name, facts));
    }

    void stock(long serial, String text) {
        catalog.put(Plants.stock(serial, text));
    }

    PlantRecord plantOf(long serial) {
        return catalog.plant(PlantKey.ofSerial(serial)).orElseThrow();
    }

    SubstituteAnswer find(long serial, Demand demand, WeighedWish... wishes) {
        return find(plantOf(serial), demand, wishes);
    }

    /// By facts alone, whatever lists say of plants of that name.
    SubstituteAnswer find(PlantRecord original, Demand demand, WeighedWish... wishes) {
        return find(original, demand, List.of(wishes), List.of());
    }

    SubstituteAnswer find(PlantRecord original, Demand demand, List<WeighedWish> asked, List<Advised> lists) {
        return find(
                new SubstituteQuery(original, Purpose.NOT_SAID, demand, Optional.empty(), asked, NOW, 3),
                PublishedAdvice.of(lists));
    }

    SubstituteAnswer find(SubstituteQuery query, PublishedAdvice lists) {
        index.catchUp();
        return new SubstituteFinder(catalog, index).knowing(lists).find(query);
    }

    static List<String> names(List<Substitute> substitutes) {
        return substitutes.stream()
                .map(one -> one.match().plant().name().toString())
                .toList();
    }

    static BotanicalName of(String genus, String species) {
        return BotanicalName.ofSpecies(genus, species);
    }

    static Facts shrub(String height, String zones, String fall, String... more) {
        List<String> pairs = new ArrayList<>(List.of(
                "life_form",
                "shrub",
                "foliage",
                "deciduous",
                "height",
                height,
                "hardiness",
                zones,
                "fall_color",
                fall,
                "exposure",
                "full sun; part shade",
                "uses",
                "hedge; massing"));
        pairs.addAll(Arrays.asList(more));
        return facts(pairs.toArray(String[]::new));
    }

    @Override
    public void close() {
        index.close();
    }
}
