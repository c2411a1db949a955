package org.benchleaf.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Complete and plausible plants for tests, so that a test states only its point.
public final class Plants {
    public static final Source LIST = new Source("a grower's list");
    public static final YearWeek NOW = new YearWeek(2026, 48);

    private Plants() {}

    /// Facts from pairs of attribute and stored text: `facts("height", "90-150 cm")`.
    public static Facts facts(String... pairs) {
        List<Fact<?>> facts = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            facts.add(fact(Attributes.byId(pairs[i]).orElseThrow(), pairs[i + 1]));
        }
        return Facts.of(facts);
    }

    static <T> Fact<T> fact(Attribute<T> attribute, String text) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), LIST, false);
    }

    public static BotanicalName name(String genus, String species) {
        return BotanicalName.ofSpecies(genus, species);
    }

    public static PlantRecord plant(long serial, BotanicalName name, Facts facts) {
        return plant(serial, name, facts, List.of(), List.of());
    }

    public static PlantRecord plant(
            long serial, BotanicalName name, Facts facts, List<String> synonyms, List<String> commonNames) {
        return new PlantRecord(
                PlantKey.ofSerial(serial),
                name,
                Optional.empty(),
                commonNames.stream()
                        .map(text -> new CommonName(text, Locale.ENGLISH))
                        .toList(),
                synonyms.stream().map(text -> new Synonym(text, LIST)).toList(),
                facts,
                List.of(),
                false);
    }

    /// Stock from rows `size, count, week or blank, price or blank`; each row an item with one lot.
    public static PlantStock stock(long serial, String... rows) {
        PlantKey plant = PlantKey.ofSerial(serial);
        List<ItemRecord> items = new ArrayList<>();
        List<LotRecord> lots = new ArrayList<>();
        for (String row : rows) {
            String[] cells =
                    Arrays.stream(row.split(",", -1)).map(String::strip).toArray(String[]::new);
            ItemKey key = new ItemKey(plant, items.size() + 1);
            Optional<Money> price = cells.length < 4 || cells[3].isEmpty()
                    ? Optional.empty()
                    : Money.read(cells[3], Currency.getInstance("USD")).toOptional();
            items.add(
                    new ItemRecord(key, StockSize.read(cells[0]).orThrow(), ItemForm.REGULAR, Optional.empty(), price));
            Optional<YearWeek> ready = cells.length < 3
                    ? Optional.empty()
                    : YearWeek.read(cells[2]).toOptional();
            lots.add(new LotRecord(
                    key.toString(), key, "A1", ready, Integer.parseInt(cells[1]), Set.of(), Optional.empty()));
        }
        return new PlantStock(plant, items, lots);
    }
}
