package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintFinding;
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
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.stock.StockSize;

/// Prints documents of chosen plants to files, and enters them in the print ledger.
public final class PrintService {
    static final String CARD = "card";

    private final CatalogView catalog;
    private final SheetAssembler sheets;
    private final Printer printer;
    private final ContentPack content;
    private final PrintStyle style;
    private final Clock clock;
    private final PrintLedger ledger;
    private final Optional<Destination> place;
    private final PressRoom room;

    /// @param place where the shop sells, for sale rules
    public PrintService(
            CatalogView catalog,
            SheetAssembler sheets,
            Printer printer,
            ContentPack content,
            PrintStyle style,
            Clock clock,
            PrintLedger ledger,
            Optional<Destination> place) {
        this.ledger = ledger;
        this.place = place;
        this.room = new PressRoom(printer, ledger);
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
        int count = PressRoom.write(file, out -> printer.plantSheets(pages, format, style, out));
        ledger.add(pages.stream().map(page -> entry(page, format)).toList());
        return count;
    }

    private static PrintEntry entry(PlantSheet sheet, SheetFormat format) {
        return new PrintEntry(
                "sheet",
                format.name().toLowerCase(Locale.ROOT),
                sheet.link().plant(),
                Optional.empty(),
                "",
                sheet.title().botanical().toString(),
                Optional.empty(),
                sheet.link().toString(),
                ModelDigest.of(sheet),
                1);
    }

    /// One bench card a plant, for its item of a size when one is asked, else for its smallest.
    ///
    /// @param priced whether the price is shown
    /// @return pages written
    /// @throws Refusal when a plant has no item of that size
    public int benchCards(
            List<PlantRecord> plants, Optional<StockSize> size, boolean priced, CardFormat format, Path file) {
        List<Wanted> wanted = plants.stream()
                .map(plant -> new Wanted(plant, size, Optional.empty()))
                .toList();
        return benchCards(wanted, priced, format, PrintOrder.GIVEN, PressOrder.USUAL, file)
                .pages();
    }

    /// One bench card a plant, or as many as are wanted.
    ///
    /// @param priced whether the price is shown
    /// @throws Refusal when a plant has no item of the size wanted
    public PressOutcome benchCards(
            List<Wanted> wanted, boolean priced, CardFormat format, PrintOrder order, PressOrder press, Path file) {
        Map<PlantKey, PlantStock> stock =
                stockOf(wanted.stream().map(Wanted::plant).toList());
        List<BenchCard> cards = new ArrayList<>();
        List<PrintEntry> entries = new ArrayList<>();
        List<PrintFinding> findings = new ArrayList<>();
        for (Wanted one : inOrder(wanted, stock, order)) {
            Optional<ItemRecord> item = item(one.plant(), stockOf(stock, one.plant()), one.size());
            BenchCard card = card(one.plant(), item, priced);
            findings.addAll(advice().sale(one.plant()));
            if (priced) {
                findings.addAll(advice().price(one.plant(), card.price()));
            }
            int copies = one.copies().orElse(1);
            cards.addAll(Collections.nCopies(copies, card));
            entries.add(entry(card, format, priced, copies));
        }
        return press(cards, format, entries, findings, press, file);
    }

    /// Cards that were printed since then and would say something else today: another price, name or fact, or another
    /// address in the code.
    ///
    /// @throws Refusal when nothing has changed
    public PressOutcome changedCards(Instant since, CardFormat format, PressOrder press, Path file) {
        List<BenchCard> cards = new ArrayList<>();
        List<PrintEntry> entries = new ArrayList<>();
        List<PrintFinding> findings = new ArrayList<>();
        for (PrintedEntry printed : ledger.newest(CARD, since)) {
            PrintEntry old = printed.entry();
            Optional<PlantRecord> plant = catalog.plant(old.plant());
            if (!old.format().equals(name(format)) || plant.isEmpty()) {
                continue;
            }
            PlantStock stock = stockOf(stockOf(List.of(plant.get())), plant.get());
            Optional<ItemRecord> item = old.item()
                    .flatMap(number -> stock.items().stream()
                            .filter(one -> one.key().number() == number)
                            .findFirst());
            boolean priced = old.detail().isEmpty();
            BenchCard card = card(plant.get(), item, priced);
            PrintEntry now = entry(card, format, priced, old.copies());
            if (item.isPresent() == old.item().isPresent() && !now.digest().equals(old.digest())) {
                cards.addAll(Collections.nCopies(old.copies(), card));
                entries.add(now);
                findings.addAll(advice().sale(plant.get()));
                if (priced) {
                    findings.addAll(advice().price(plant.get(), card.price()));
                }
            }
        }
        if (cards.isEmpty()) {
            throw new Refusal(Problem.of("print.unchanged", ""));
        }
        return press(cards, format, entries, findings, press, file);
    }

    private PressOutcome press(
            List<BenchCard> cards,
            CardFormat format,
            List<PrintEntry> entries,
            List<PrintFinding> findings,
            PressOrder press,
            Path file) {
        return room.print(
                (printer, out) -> printer.benchCards(cards, format, style, out), findings, entries, press, file);
    }

    private BenchCard card(PlantRecord plant, Optional<ItemRecord> item, boolean priced) {
        return sheets.card(plant, item.map(one -> priced ? one : withoutPrice(one)), LocalDate.now(clock));
    }

    static PrintEntry entry(BenchCard card, CardFormat format, boolean priced, int copies) {
        return new PrintEntry(
                CARD,
                name(format),
                card.link().plant(),
                card.link().item(),
                priced ? "" : "no price",
                card.title().botanical().toString(),
                card.price().map(Money::toString),
                card.link().toString(),
                ModelDigest.of(card),
                copies);
    }

    private static String name(CardFormat format) {
        return format.name().toLowerCase(Locale.ROOT);
    }

    /// Labels of every lot of the plants that holds any, in the order of their places.
    ///
    /// @param copies how many of each, 1 or more
    /// @return sheets written
    public int labels(List<PlantRecord> plants, Optional<StockSize> size, int copies, LabelRun run, Path file) {
        List<Wanted> wanted = plants.stream()
                .map(plant -> new Wanted(plant, size, Optional.of(copies)))
                .toList();
        return labels(wanted, false, run, PrintOrder.GIVEN, PressOrder.USUAL, file)
                .pages();
    }

    /// Labels of every lot of the plants that holds any.
    ///
    /// @param byCount whether each plant of a lot gets one; otherwise as many as are wanted, or one
    /// @throws Refusal when no lot holds any
    public PressOutcome labels(
            List<Wanted> wanted, boolean byCount, LabelRun run, PrintOrder order, PressOrder press, Path file) {
        List<Label> labels = new ArrayList<>();
        List<PrintEntry> entries = new ArrayList<>();
        List<PrintFinding> findings = new ArrayList<>();
        Map<PlantKey, PlantStock> stock =
                stockOf(wanted.stream().map(Wanted::plant).toList());
        for (Wanted one : inOrder(wanted, stock, order)) {
            PlantStock own = stockOf(stock, one.plant());
            List<LotRecord> lots = lots(one, own);
            findings.addAll(lots.isEmpty() ? List.of() : advice().sale(one.plant()));
            for (LotRecord lot : lots) {
                Label label = sheets.label(one.plant(), item(own, lot.item()), lot);
                if (byCount) {
                    findings.addAll(advice().count(one.plant(), lot));
                }
                int copies = byCount ? lot.count() : one.copies().orElse(1);
                labels.addAll(Collections.nCopies(copies, label));
                entries.add(new PrintEntry(
                        "label",
                        run.paper().key(),
                        one.plant().key(),
                        Optional.of(lot.item().number()),
                        lot.lot(),
                        label.title().botanical().toString(),
                        label.price().map(Money::toString),
                        label.link().toString(),
                        ModelDigest.of(label),
                        copies));
            }
        }
        if (labels.isEmpty()) {
            throw new Refusal(Problem.of(
                    "print.nothing",
                    wanted.isEmpty() ? "" : wanted.getFirst().plant().name().toString()));
        }
        return room.print((printer, out) -> printer.labels(labels, run, style, out), findings, entries, press, file);
    }

    /// The same labels as pictures of black and white dots, `1.png` and so on; one that cannot be printed has no
    /// picture.
    ///
    /// @throws Refusal when the paper holds more than one label
    public void labelPictures(List<Wanted> wanted, boolean byCount, LabelRun run, PrintOrder order, Path folder) {
        if (run.paper().cells() != 1) {
            throw new Refusal(Problem.of("print.png-paper", run.paper().key()));
        }
        int[] number = {0};
        try {
            Files.createDirectories(folder);
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("print.unwritable", folder.toString()));
        }
        Map<PlantKey, PlantStock> stock =
                stockOf(wanted.stream().map(Wanted::plant).toList());
        List<Label> labels = new ArrayList<>();
        for (Wanted one : inOrder(wanted, stock, order)) {
            PlantStock own = stockOf(stock, one.plant());
            for (LotRecord lot : lots(one, own)) {
                labels.addAll(Collections.nCopies(
                        byCount ? lot.count() : one.copies().orElse(1),
                        sheets.label(one.plant(), item(own, lot.item()), lot)));
            }
        }
        printer.watchedBy(refusal -> {}).labelPictures(labels, run, style, picture -> {
            try {
                Files.write(folder.resolve(++number[0] + ".png"), picture);
            } catch (IOException unwritable) {
                throw new Refusal(Problem.of("print.unwritable", folder.toString()));
            }
        });
    }

    private static List<LotRecord> lots(Wanted one, PlantStock own) {
        return own.lots().stream()
                .filter(lot -> lot.count() > 0)
                .filter(lot -> one.size().isEmpty()
                        || item(own, lot.item()).size().equals(one.size().get()))
                .sorted(Comparator.comparing((LotRecord lot) -> walked(lot.place()))
                        .thenComparing(LotRecord::lot))
                .toList();
    }

    /// The page that shows what a printer does wrong.
    public void calibration(SheetFormat format, String printerName, Path file) {
        PressRoom.write(file, out -> {
            printer.calibration(format, printerName, style, out);
            return 1;
        });
    }

    /// The cells of a stock paper as outlines.
    public void proof(StockPaper paper, PressSettings press, Path file) {
        PressRoom.write(file, out -> {
            printer.on(press).proof(paper, style, out);
            return 1;
        });
    }

    /// The same in another order.
    public List<Wanted> inOrder(List<Wanted> wanted, PrintOrder order) {
        return inOrder(wanted, stockOf(wanted.stream().map(Wanted::plant).toList()), order);
    }

    private PrintAdvice advice() {
        return new PrintAdvice(place, LocalDate.now(clock));
    }

    private static List<Wanted> inOrder(List<Wanted> wanted, Map<PlantKey, PlantStock> stock, PrintOrder order) {
        return switch (order) {
            case GIVEN -> wanted;
            case NAME ->
                wanted.stream()
                        .sorted(Comparator.comparing(one -> one.plant().name().toString()))
                        .toList();
            case BENCH ->
                wanted.stream()
                        .sorted(Comparator.comparing(one -> stockOf(stock, one.plant()).lots().stream()
                                .filter(lot -> lot.count() > 0)
                                .map(lot -> walked(lot.place()))
                                .min(Comparator.naturalOrder())
                                .orElse("\uFFFF")))
                        .toList();
        };
    }

    /// A place so written that `B4-2` stands before `B4-12`.
    static String walked(String place) {
        return Pattern.compile("\\d+")
                .matcher(place)
                .replaceAll(number -> "0".repeat(Math.max(0, 8 - number.group().length())) + number.group());
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

    static ItemRecord withoutPrice(ItemRecord item) {
        return new ItemRecord(item.key(), item.size(), item.form(), item.gtin(), Optional.empty());
    }
}
