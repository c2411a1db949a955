package org.benchleaf.app.service;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// Cards in the field that would say something else today: another price, name or fact, or another address in the code.
public final class Reprints {
    private final CatalogView catalog;
    private final SheetAssembler sheets;
    private final PrintLedger ledger;
    private final LocalDate today;

    /// @param sheets in the words of the shop
    public Reprints(CatalogView catalog, SheetAssembler sheets, PrintLedger ledger, LocalDate today) {
        this.catalog = catalog;
        this.sheets = sheets;
        this.ledger = ledger;
        this.today = today;
    }

    /// A card that was printed and would say something else.
    ///
    /// @param size of its item, when it is about one
    /// @param now what it would say
    public record Changed(PrintedEntry printed, CardFormat format, Optional<StockSize> size, PrintEntry now) {
        /// Whether it shows a price.
        public boolean priced() {
            return printed.entry().detail().isEmpty();
        }

        /// Whether it was the price that changed.
        public boolean otherPrice() {
            return !printed.entry().price().equals(now.price());
        }

        /// Whether its code would lead to another address.
        public boolean otherAddress() {
            return !printed.entry().address().equals(now.address());
        }
    }

    /// All of them, in the order in which they were printed. A plant or size that is gone is left out: nothing can be
    /// printed in its place.
    public List<Changed> cards() {
        List<PrintedEntry> printed = ledger.newest(CardPrints.CARD, Instant.EPOCH);
        List<PlantKey> keys =
                printed.stream().map(one -> one.entry().plant()).distinct().toList();
        Map<PlantKey, PlantRecord> plants = catalog.plants(keys);
        Map<PlantKey, PlantStock> stocks = catalog.stock(keys);
        List<Changed> changed = new ArrayList<>();
        for (PrintedEntry one : printed) {
            PlantRecord plant = plants.get(one.entry().plant());
            if (plant != null && !plant.retired()) {
                PlantStock stock = stocks.getOrDefault(plant.key(), PlantStock.none(plant.key()));
                format(one.entry())
                        .flatMap(format -> changed(one, format, plant, stock))
                        .ifPresent(changed::add);
            }
        }
        return changed;
    }

    private static Optional<CardFormat> format(PrintEntry entry) {
        return Arrays.stream(CardFormat.values())
                .filter(format -> format.name().toLowerCase(Locale.ROOT).equals(entry.format()))
                .findFirst();
    }

    private Optional<Changed> changed(PrintedEntry printed, CardFormat format, PlantRecord plant, PlantStock stock) {
        PrintEntry old = printed.entry();
        Optional<ItemRecord> item = old.item()
                .flatMap(number -> stock.items().stream()
                        .filter(one -> one.key().number() == number)
                        .findFirst());
        if (item.isPresent() != old.item().isPresent()) {
            return Optional.empty();
        }
        boolean priced = old.detail().isEmpty();
        BenchCard card = sheets.card(plant, item.map(one -> priced ? one : CardPrints.withoutPrice(one)), today);
        PrintEntry now = CardPrints.entry(card, format, priced, old.copies());
        return now.digest().equals(old.digest())
                ? Optional.empty()
                : Optional.of(new Changed(printed, format, item.map(ItemRecord::size), now));
    }
}
