package org.benchleaf.app.service;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.measure.Money;

/// Prints bench cards and signs.
public final class CardPrints {
    static final String CARD = "card";

    private final PrintDesk desk;
    private final CodeKind codes;

    CardPrints(PrintDesk desk, CodeKind codes) {
        this.desk = desk;
        this.codes = codes;
    }

    /// The same with codes of that kind.
    public CardPrints with(CodeKind kind) {
        return new CardPrints(desk, kind);
    }

    /// One bench card a plant, or as many as are wanted: for its item of the size wanted, else for its smallest.
    ///
    /// @param priced whether the price is shown
    /// @throws Refusal when a plant has no item of the size wanted
    public PressOutcome print(
            List<Wanted> wanted, boolean priced, CardFormat format, PrintOrder order, PressOrder press, Path file) {
        PrintStock stock = PrintStock.ofWanted(desk.catalog(), wanted);
        PrintBatch<BenchCard> batch = new PrintBatch<>();
        for (Wanted one : stock.inOrder(wanted, order)) {
            Optional<ItemRecord> item = stock.item(one.plant(), one.size());
            add(one.plant(), item, priced, format, one.copies().orElse(1), batch);
        }
        return press(batch, format, press, file);
    }

    /// Cards that were printed since then and would say something else today: another price, name or fact, or another
    /// address in the code.
    ///
    /// @throws Refusal when nothing has changed
    public PressOutcome changed(Instant since, CardFormat format, PressOrder press, Path file) {
        PrintBatch<BenchCard> batch = new PrintBatch<>();
        for (PrintedEntry printed : desk.ledger().newest(CARD, since)) {
            PrintEntry old = printed.entry();
            if (old.format().equals(name(format))) {
                desk.catalog().plant(old.plant()).ifPresent(plant -> addChanged(plant, old, format, batch));
            }
        }
        if (batch.isEmpty()) {
            throw new Refusal(Problem.of("print.unchanged", ""));
        }
        return press(batch, format, press, file);
    }

    private void addChanged(PlantRecord plant, PrintEntry old, CardFormat format, PrintBatch<BenchCard> batch) {
        PrintStock stock = PrintStock.of(desk.catalog(), List.of(plant));
        Optional<ItemRecord> item = old.item().flatMap(number -> stock.item(plant, number));
        boolean priced = old.detail().isEmpty();
        boolean there = item.isPresent() == old.item().isPresent();
        if (there && !ModelDigest.of(card(plant, item, priced)).equals(old.digest())) {
            add(plant, item, priced, format, old.copies(), batch);
        }
    }

    private void add(
            PlantRecord plant,
            Optional<ItemRecord> item,
            boolean priced,
            CardFormat format,
            int copies,
            PrintBatch<BenchCard> batch) {
        BenchCard card = card(plant, item, priced);
        batch.add(card, entry(card, format, priced, copies));
        batch.found(desk.advice().sale(plant));
        if (codes == CodeKind.DIGITAL_LINK && card.trade().isEmpty()) {
            batch.found(desk.advice().noTradeNumber(plant));
        }
        if (priced) {
            batch.found(desk.advice().price(plant, card.price()));
        }
    }

    private PressOutcome press(PrintBatch<BenchCard> batch, CardFormat format, PressOrder press, Path file) {
        return desk.room()
                .print(
                        (printer, out) -> printer.benchCards(batch.models(), format, desk.style(), out),
                        batch.findings(),
                        batch.entries(),
                        press,
                        file);
    }

    private BenchCard card(PlantRecord plant, Optional<ItemRecord> item, boolean priced) {
        BenchCard card = desk.sheets().card(plant, item.map(one -> priced ? one : withoutPrice(one)), desk.today());
        return codes == CodeKind.LIVE
                ? card
                : item.flatMap(ItemRecord::gtin)
                        .map(gtin -> card.withTrade(new DigitalLink(card.link().base(), gtin, Optional.empty())))
                        .orElse(card);
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
                card.trade()
                        .map(DigitalLink::toString)
                        .orElseGet(() -> card.link().toString()),
                ModelDigest.of(card),
                copies);
    }

    private static String name(CardFormat format) {
        return format.name().toLowerCase(Locale.ROOT);
    }

    static ItemRecord withoutPrice(ItemRecord item) {
        return new ItemRecord(item.key(), item.size(), item.form(), item.gtin(), Optional.empty());
    }
}
