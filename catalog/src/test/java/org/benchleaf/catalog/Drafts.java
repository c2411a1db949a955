package org.benchleaf.catalog;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Complete and plausible drafts, so that a test states only its point.
public final class Drafts {
    public static final Source LIST = new Source("grower's list, 2026");
    public static final Source HANDBOOK = new Source("a handbook, 1998");
    public static final BotanicalName RED_MAPLE = BotanicalName.ofSpecies("Acer", "rubrum");
    public static final BotanicalName OCTOBER_GLORY = RED_MAPLE.withCultivar("October Glory");

    private static final Place ROW = new Place("plants.csv", 2, Optional.empty());

    private Drafts() {}

    public static PlantDraft plant(BotanicalName name, Fact<?>... facts) {
        return new PlantDraft(ROW, Optional.empty(), name, List.of(), List.of(), List.of(facts));
    }

    public static PlantDraft keyed(PlantKey key, PlantDraft draft) {
        return new PlantDraft(
                draft.place(), Optional.of(key), draft.name(), draft.commonNames(), draft.synonyms(), draft.facts());
    }

    public static PlantDraft called(PlantDraft draft, String... englishNames) {
        List<CommonName> names = new ArrayList<>(draft.commonNames());
        for (String name : englishNames) {
            names.add(new CommonName(name, Locale.ENGLISH));
        }
        return new PlantDraft(draft.place(), draft.key(), draft.name(), names, draft.synonyms(), draft.facts());
    }

    public static PlantDraft alsoKnownAs(PlantDraft draft, String... synonyms) {
        List<Synonym> all = new ArrayList<>(draft.synonyms());
        for (String synonym : synonyms) {
            all.add(new Synonym(synonym, LIST));
        }
        return new PlantDraft(draft.place(), draft.key(), draft.name(), draft.commonNames(), all, draft.facts());
    }

    public static <T> Fact<T> fact(Attribute<T> attribute, String text) {
        return fact(attribute, text, LIST);
    }

    public static <T> Fact<T> fact(Attribute<T> attribute, String text, Source source) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), source, false);
    }

    public static LotDraft lot(String number, BotanicalName name, int count) {
        return new LotDraft(
                new Place("stock.csv", 2, Optional.empty()),
                number,
                Optional.empty(),
                name,
                StockSize.read("#3").orThrow(),
                ItemForm.REGULAR,
                "B4-12",
                count,
                Optional.empty(),
                Optional.of(Money.usDollars("21.50")),
                Set.of(Condition.FALL_COLOR_STARTING),
                Optional.of(LocalDate.of(2026, 11, 12)),
                Optional.empty());
    }

    public static LotDraft inSize(LotDraft draft, String size) {
        return new LotDraft(
                draft.place(),
                draft.lot(),
                draft.plant(),
                draft.name(),
                StockSize.read(size).orThrow(),
                draft.form(),
                draft.where(),
                draft.count(),
                draft.ready(),
                draft.price(),
                draft.conditions(),
                draft.seenOn(),
                draft.gtin());
    }

    public static ImportPlan plan(Catalog catalog, PlantDraft... plants) {
        return plan(catalog, ImportPlan.Rank.OWN, List.of(plants), List.of());
    }

    public static ImportPlan plan(Catalog catalog, ImportPlan.Rank rank, List<PlantDraft> plants, List<LotDraft> lots) {
        return new ImportPlan(
                "plants.csv",
                catalog.view().revision(),
                rank,
                plants.size() + (long) lots.size(),
                plants,
                lots,
                List.of());
    }

    /// A red maple with a height, and one of its cultivars.
    public static List<PlantDraft> maples() {
        return List.of(
                called(
                        plant(
                                RED_MAPLE,
                                fact(Attributes.HEIGHT, "40-60 ft"),
                                fact(Attributes.HARDINESS, "3-9"),
                                fact(Attributes.HABIT, "rounded")),
                        "red maple",
                        "swamp maple"),
                plant(OCTOBER_GLORY, fact(Attributes.HABIT, "oval")));
    }
}
