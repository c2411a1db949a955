package org.benchleaf.app.service;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// Prints documents of chosen plants to files. A file appears whole or not at all: it is written beside
/// its place and moved there when it is done.
public final class PrintService {
    private final CatalogView catalog;
    private final SheetAssembler sheets;
    private final Printer printer;
    private final ContentPack content;
    private final PrintStyle style;
    private final Clock clock;

    public PrintService(
            CatalogView catalog,
            SheetAssembler sheets,
            Printer printer,
            ContentPack content,
            PrintStyle style,
            Clock clock) {
        this.catalog = catalog;
        this.sheets = sheets;
        this.printer = printer;
        this.content = content;
        this.style = style;
        this.clock = clock;
    }

    /// One product sheet a plant, with its stock as of now.
    ///
    /// @return pages written
    public int plantSheets(List<PlantRecord> plants, SheetFormat format, Path file) {
        return plantSheets(plants, format, false, file);
    }

    /// The same.
    ///
    /// @param everySource whether what other sources state stands beside the facts shown
    /// @return pages written
    public int plantSheets(List<PlantRecord> plants, SheetFormat format, boolean everySource, Path file) {
        LocalDateTime now = LocalDateTime.now(clock).withSecond(0).withNano(0);
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        List<PlantSheet> pages = plants.stream()
                .map(plant -> sheets.sheet(plant, stockOf(stock, plant), now, everySource))
                .toList();
        return write(file, out -> printer.plantSheets(pages, format, style, out));
    }

    /// One bench card a plant, for its item of a size when one is asked, else for its smallest.
    ///
    /// @param priced whether the price is shown
    /// @return pages written
    /// @throws Refusal when a plant has no item of that size
    public int benchCards(
            List<PlantRecord> plants, Optional<StockSize> size, boolean priced, CardFormat format, Path file) {
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        List<BenchCard> cards = new ArrayList<>();
        for (PlantRecord plant : plants) {
            Optional<ItemRecord> item = item(plant, stockOf(stock, plant), size);
            cards.add(sheets.card(
                    plant, item.map(one -> priced ? one : withoutPrice(one)), LocalDate.now(clock)));
        }
        return write(file, out -> printer.benchCards(cards, format, style, out));
    }

    /// Labels of every lot of the plants that holds any, in the order of their places.
    ///
    /// @param copies how many of each, 1 or more
    /// @return sheets written
    public int labels(List<PlantRecord> plants, Optional<StockSize> size, int copies, LabelRun run, Path file) {
        List<Label> labels = new ArrayList<>();
        Map<PlantKey, PlantStock> stock = stockOf(plants);
        for (PlantRecord plant : plants) {
            PlantStock own = stockOf(stock, plant);
            own.lots().stream()
                    .filter(lot -> lot.count() > 0)
                    .filter(lot ->
                            size.isEmpty() || item(own, lot.item()).size().equals(size.get()))
                    .sorted(Comparator.comparing(LotRecord::place).thenComparing(LotRecord::lot))
                    .forEach(lot -> {
                        for (int copy = 0; copy < copies; copy++) {
                            labels.add(sheets.label(plant, item(own, lot.item()), lot));
                        }
                    });
        }
        if (labels.isEmpty()) {
            throw new Refusal(Problem.of(
                    "print.nothing",
                    plants.isEmpty() ? "" : plants.get(0).name().toString()));
        }
        return write(file, out -> printer.labels(labels, run, style, out));
    }

    /// A stock paper by its key.
    ///
    /// @throws Refusal when there is none of that key
    public StockPaper paper(String key) {
        return content.papers().stream()
                .filter(paper -> paper.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new Refusal(Problem.of("paper.unknown", key)
                        .with(
                                "accepted",
                                String.join(
                                        ", ",
                                        content.papers().stream()
                                                .map(StockPaper::key)
                                                .toList()))));
    }

    private Map<PlantKey, PlantStock> stockOf(List<PlantRecord> plants) {
        return catalog.stock(plants.stream().map(PlantRecord::key).toList());
    }

    private static PlantStock stockOf(Map<PlantKey, PlantStock> stock, PlantRecord plant) {
        return stock.getOrDefault(plant.key(), PlantStock.none(plant.key()));
    }

    private static Optional<ItemRecord> item(PlantRecord plant, PlantStock stock, Optional<StockSize> size) {
        if (size.isEmpty()) {
            return stock.items().stream().findFirst();
        }
        return Optional.of(stock.items().stream()
                .filter(item -> item.size().equals(size.get()))
                .findFirst()
                .orElseThrow(() ->
                        new Refusal(Problem.of("item.no-such-size", size.get().toString())
                                .with("plant", plant.name().toString())
                                .with(
                                        "accepted",
                                        String.join(
                                                ", ",
                                                stock.items().stream()
                                                        .map(item -> item.size().toString())
                                                        .distinct()
                                                        .toList())))));
    }

    private static ItemRecord item(PlantStock stock, ItemKey key) {
        return stock.items().stream()
                .filter(item -> item.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a lot without its item: " + key));
    }

    private static ItemRecord withoutPrice(ItemRecord item) {
        return new ItemRecord(item.key(), item.size(), item.form(), item.gtin(), Optional.empty());
    }

    interface Pages {
        int print(OutputStream out) throws IOException;
    }

    static int write(Path file, Pages pages) {
        Path place = file.toAbsolutePath();
        try {
            Path folder = Optional.ofNullable(place.getParent()).orElse(place);
            Files.createDirectories(folder);
            Path partly = Files.createTempFile(folder, ".benchleaf-", ".pdf");
            try {
                int count;
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(partly))) {
                    count = pages.print(out);
                }
                Files.move(partly, place, StandardCopyOption.REPLACE_EXISTING);
                return count;
            } finally {
                Files.deleteIfExists(partly);
            }
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("print.unwritable", file.toString()));
        }
    }
}
