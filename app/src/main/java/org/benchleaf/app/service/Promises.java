package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;

/// Sets plants of an item aside for a customer, from as few of its lots as can be: all of them, or none.
public final class Promises {
    /// So often the lots are chosen anew when somebody else took of them meanwhile.
    private static final int TRIES = 5;

    private final CatalogView catalog;
    private final StockLedger ledger;

    public Promises(CatalogView catalog, StockLedger ledger) {
        this.catalog = catalog;
        this.ledger = ledger;
    }

    /// What somebody asks for.
    ///
    /// @param number plants, 1 or more
    /// @param by the week by which they must be ready
    /// @param entry makes the entry of one lot, given its lot, what is held and a key
    public record Asked(ItemKey item, int number, YearWeek by, String key, EntryMaker entry) {}

    /// Makes the entry of one lot.
    public interface EntryMaker {
        LedgerEntry of(String lot, int number, String key);
    }

    /// What was set aside of one lot.
    ///
    /// @param lot what the lot holds after it
    public record Part(LedgerEntry entry, Balance lot, boolean writtenBefore) {}

    /// Sets them aside.
    ///
    /// @throws Refusal when so many are not free (`promise.few`), an entry is refused, or the key is that of
    ///     another promise
    public List<Part> hold(Asked asked) {
        List<Part> before = writtenBefore(asked);
        if (!before.isEmpty()) {
            return before;
        }
        for (int attempt = 1; ; attempt++) {
            List<LedgerEntry> entries = entries(asked);
            List<LedgerResult> results = ledger.recordTogether(entries);
            Optional<Problem> refused = results.stream()
                    .filter(LedgerResult.Refused.class::isInstance)
                    .map(result -> ((LedgerResult.Refused) result).problem())
                    .findFirst();
            if (refused.isEmpty()) {
                return IntStream.range(0, entries.size())
                        .mapToObj(at -> part(entries.get(at), results.get(at)))
                        .toList();
            }
            boolean taken = refused.get().key().equals("ledger.held")
                    || refused.get().key().equals("ledger.too.few");
            if (!taken || attempt == TRIES) {
                throw new Refusal(refused.get());
            }
        }
    }

    /// The same promise sent again finds what is left of its holds, however stock has moved since.
    private List<Part> writtenBefore(Asked asked) {
        List<Part> parts = new ArrayList<>();
        for (int at = 1; ; at++) {
            Optional<Hold> hold = ledger.hold(key(asked, at));
            Optional<LotRecord> lot = hold.flatMap(found -> ledger.lot(found.lot()));
            if (lot.isEmpty()) {
                return parts;
            }
            if (!lot.get().item().equals(asked.item()) || hold.get().quantity() > asked.number()) {
                throw new Refusal(Problem.of("ledger.key.reused", asked.key())
                        .with("lot", asked.item().toString())
                        .with("earlier", lot.get().lot()));
            }
            parts.add(new Part(
                    asked.entry().of(lot.get().lot(), hold.get().quantity(), key(asked, at)),
                    new Balance(lot.get().count(), lot.get().held()),
                    true));
        }
    }

    private List<LedgerEntry> entries(Asked asked) {
        PlantStock stock = catalog.stock(List.of(asked.item().plant()))
                .getOrDefault(asked.item().plant(), PlantStock.none(asked.item().plant()));
        List<LotRecord> free = stock.lotsOf(asked.item()).stream()
                .filter(lot -> lot.isReadyBy(asked.by()) && lot.free() > 0)
                .sorted(Comparator.comparing(LotRecord::free).thenComparing(LotRecord::lot))
                .toList();
        int all = free.stream().mapToInt(LotRecord::free).sum();
        if (all < asked.number()) {
            throw new Refusal(Problem.of("promise.few", Integer.toString(asked.number()))
                    .with("free", Integer.toString(all))
                    .with("by", asked.by().toString())
                    .with("lots", free.stream().map(LotRecord::lot).collect(Collectors.joining(", "))));
        }
        List<LedgerEntry> entries = new ArrayList<>();
        int left = asked.number();
        for (LotRecord lot : asFewAsCanBe(free, left)) {
            int taken = Math.min(left, lot.free());
            entries.add(asked.entry().of(lot.lot(), taken, key(asked, entries.size() + 1)));
            left -= taken;
        }
        return entries;
    }

    /// The smallest lot that has enough alone; else the fullest ones until there are enough.
    private static List<LotRecord> asFewAsCanBe(List<LotRecord> smallestFirst, int number) {
        Optional<LotRecord> alone =
                smallestFirst.stream().filter(lot -> lot.free() >= number).findFirst();
        if (alone.isPresent()) {
            return List.of(alone.get());
        }
        List<LotRecord> taken = new ArrayList<>();
        int left = number;
        for (LotRecord lot : smallestFirst.reversed()) {
            if (left > 0) {
                taken.add(lot);
                left -= lot.free();
            }
        }
        return taken;
    }

    private static Part part(LedgerEntry entry, LedgerResult result) {
        return switch (result) {
            case LedgerResult.Applied(Balance lot) -> new Part(entry, lot, false);
            case LedgerResult.AlreadyApplied(Balance lot) -> new Part(entry, lot, true);
            case LedgerResult.Refused(Problem problem) -> throw new Refusal(problem);
        };
    }

    private static String key(Asked asked, int part) {
        return asked.key() + "-" + part;
    }
}
