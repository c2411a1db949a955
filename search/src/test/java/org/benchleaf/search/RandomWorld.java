package org.benchleaf.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Catalogs at random, the same for the same seed: every attribute that is judged, three of ten facts missing.
public final class RandomWorld {
    private static final String[] GENERA = {"Acer", "Buxus", "Cornus", "Hydrangea", "Itea", "Ilex"};
    private static final String[] EPITHETS = {"alba", "rubra", "japonica", "virginica", "paniculata", "crenata"};
    private static final String[] SIZES = {"#1", "#2", "#3", "#5", "19 cm", "2.5 in cal B&B", "5-6 ft B&B"};
    private static final String TOLERANCES = "none|low|medium|high";
    private static final String RATINGS = "rarely|seldom|occasionally|frequently";
    private static final String COLORS = "none|white|deep red #8B1E2D|pink; white|violet-blue #6A5ACD|yellow|"
            + "dark green #2F5D3A|yellow-green #9ACD32|gray-green #8FA08F|burgundy; green|silver|orange; red";
    private static final String MONTHS = "Apr-May|Jun|Jun-Aug|Sep-Oct|Nov-Feb|Dec-Mar|Jan-Dec|Oct";
    private static final Map<String, String[]> POOLS = pools();

    private final Random random;

    public RandomWorld(long seed) {
        random = new Random(seed);
    }

    /// A catalog of so many plants, some without stock, one in twenty retired.
    public InMemoryCatalogView catalog(int plants) {
        InMemoryCatalogView catalog = new InMemoryCatalogView();
        for (int serial = 0; serial < plants; serial++) {
            catalog.put(plant(serial));
            if (random.nextInt(5) > 0) {
                catalog.put(stock(serial));
            }
            if (random.nextInt(20) == 0) {
                catalog.retire(PlantKey.ofSerial(serial));
            }
        }
        return catalog;
    }

    public PlantRecord plant(long serial) {
        BotanicalName species = Plants.name(pick(GENERA), pick(EPITHETS));
        BotanicalName name = random.nextBoolean() ? species : species.withCultivar("No " + random.nextInt(40));
        List<String> pairs = new ArrayList<>();
        for (Map.Entry<String, String[]> pool : POOLS.entrySet()) {
            if (random.nextInt(10) >= 3) {
                pairs.add(pool.getKey());
                pairs.add(pick(pool.getValue()));
            }
        }
        Facts facts = Plants.facts(pairs.toArray(String[]::new));
        if (random.nextInt(10) >= 3) {
            facts = facts.and(SaleRuleSamples.fact(SaleRuleSamples.said(random)));
        }
        return Plants.plant(serial, name, facts, List.of(), List.of());
    }

    public PlantStock stock(long serial) {
        PlantKey plant = PlantKey.ofSerial(serial);
        List<ItemRecord> items = new ArrayList<>();
        List<LotRecord> lots = new ArrayList<>();
        int count = random.nextInt(4);
        for (int number = 1; number <= count; number++) {
            ItemKey key = new ItemKey(plant, number);
            Optional<Money> price = random.nextInt(4) == 0
                    ? Optional.empty()
                    : Optional.of(Money.usDollars(5 + random.nextInt(60) + ".50"));
            ItemForm form = ItemForm.values()[random.nextInt(3)];
            items.add(new ItemRecord(key, StockSize.read(pick(SIZES)).orThrow(), form, Optional.empty(), price));
            int lotCount = random.nextInt(3);
            for (int lot = 0; lot < lotCount; lot++) {
                Optional<YearWeek> ready = random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new YearWeek(2027, 1 + random.nextInt(30)));
                lots.add(new LotRecord(
                        key + "/" + lot, key, "A1", ready, random.nextInt(80), Set.of(), Optional.empty()));
            }
        }
        return new PlantStock(plant, items, lots);
    }

    private <T> T pick(T[] from) {
        return from[random.nextInt(from.length)];
    }

    private static Map<String, String[]> pools() {
        Map<String, String> texts = new HashMap<>();
        texts.put("hardiness", "3-7|4-8|5b-9a|6-9|6b-8b|7-10|4b+|3+");
        texts.put("exposure", "full sun|full sun; part sun|part shade|part shade; full shade|full shade");
        texts.put("moisture", "dry|dry; medium|medium|medium; moist|moist; wet|wet");
        texts.put("soil_texture", "sand|sand; loam|loam|clay|sand; loam; clay");
        texts.put("juglone", "tolerant|sensitive");
        texts.put("deer", RATINGS);
        texts.put("rabbit", RATINGS);
        texts.put("height", "20-40 cm|60-90 cm|90-150 cm|150-158 cm|183-244 cm|300-500 cm|1200 cm");
        texts.put("spread", "30-50 cm|60-90 cm|120-180 cm|300-400 cm");
        texts.put("life_form", "shrub|tree|conifer|perennial; groundcover|shrub; groundcover|grass|fern");
        texts.put("foliage", "deciduous|evergreen|semi-evergreen|herbaceous");
        texts.put("heat_zone", "1-8|4-9|3-6");
        texts.put("soil_ph", "4.5-6.5|6.0-8.0|5.5-7.0");
        texts.put("water_need", "low|medium|high");
        texts.put("growth_rate", "slow|medium|fast");
        texts.put("height_10yr", "20-40 cm|60-90 cm|150-158 cm|183-244 cm");
        texts.put("spread_10yr", "30-50 cm|60-90 cm|120-180 cm");
        texts.put("sex", "male|female|dioecious");
        texts.put("self_fertile", "yes|no|partly");
        texts.put("habit", "columnar|rounded|spreading|upright");
        texts.put("stem_note", "peeling bark|corky wings");
        texts.put("fragrance", "none|light|strong");
        texts.put("wildlife", "nectar|nectar; pollen|bird food|larval host; nectar");
        texts.put("uses", "hedge; screen|foundation|groundcover; slope|rain garden|street");
        texts.put(
                "known_for",
                "shade|wet ground; drought|fruit; fall color|flowers; hedge; deer|dry shade; salt; bark; foliage"
                        + "|pollinators; birds; fragrance|screen; groundcover; clay; walnut; city");
        texts.put("grown", "staple|common|uncommon|rare");
        texts.put("native_states", "US-PA US-NY|US-VA US-NC|US-PA|CA-ON US-ME");
        texts.put("native_range", "Japan|China, Korea|eastern North America|Europe and western Asia|garden hybrid");
        texts.put(
                "cautions",
                "none known|toxic: dogs, cats - all parts|thorns: people|irritant: children - sap|spreads: gardens"
                        + "|toxic: horses|pollen: people");
        for (String attribute :
                List.of("drought_tolerance", "wet_tolerance", "salt_soil", "salt_spray", "compaction")) {
            texts.put(attribute, TOLERANCES);
        }
        for (var attribute : Attributes.all()) {
            if (attribute.id().endsWith("_color")) {
                texts.put(attribute.id(), COLORS);
            }
        }
        for (String attribute : List.of("bloom", "fall_months", "fruit", "stem_months")) {
            texts.put(attribute, MONTHS);
        }
        Map<String, String[]> pools = new LinkedHashMap<>();
        new TreeMap<>(texts).forEach((id, choices) -> pools.put(id, choices.split("\\|")));
        return pools;
    }
}
