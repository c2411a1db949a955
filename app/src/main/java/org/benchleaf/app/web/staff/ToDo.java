package org.benchleaf.app.web.staff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;

/// What of the stock needs somebody, found in one pass and kept until the catalog changes or the day does.
final class ToDo {
    /// A look at a lot is old after this; common practice, no source.
    private static final int OLD_DAYS = 14;
    /// So few that a customer may ask for more; common practice, no source.
    static final int FEW = 10;

    private static final int SHOWN = 8;

    private final Benchleaf benchleaf;
    private Optional<Found> kept = Optional.empty();

    ToDo(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
    }

    /// @param day seen last; empty for never
    record Unseen(LotRecord lot, Optional<LocalDate> day) {}

    record Low(PlantKey plant, ItemRecord item, int free) {}

    /// @param unseen how many lots nobody looked at lately; the oldest looks first
    /// @param low how many sizes are nearly gone; the fewest first
    record Found(
            CatalogRevision revision,
            LocalDate day,
            int unseen,
            List<Unseen> oldest,
            int low,
            List<Low> fewest,
            int gone) {}

    synchronized Found found() {
        CatalogRevision now = benchleaf.catalog().revision();
        LocalDate today = benchleaf.today();
        if (kept.isEmpty()
                || !kept.get().revision().equals(now)
                || !kept.get().day().equals(today)) {
            kept = Optional.of(look(now, today));
        }
        return kept.orElseThrow();
    }

    private Found look(CatalogRevision revision, LocalDate today) {
        List<Unseen> unseen = new ArrayList<>();
        List<Low> low = new ArrayList<>();
        int[] gone = {0};
        YearWeek week = YearWeek.of(today);
        LocalDate old = today.minusDays(OLD_DAYS);
        benchleaf.catalog().forEachStock(stock -> {
            for (LotRecord lot : stock.lots()) {
                if (lot.count() > 0
                        && lot.isReadyBy(week)
                        && lot.seenOn().map(day -> day.isBefore(old)).orElse(true)) {
                    unseen.add(new Unseen(lot, lot.seenOn()));
                }
            }
            for (ItemRecord item : stock.items()) {
                int free = free(stock, item, week);
                if (free == 0) {
                    gone[0]++;
                } else if (free <= FEW) {
                    low.add(new Low(stock.plant(), item, free));
                }
            }
        });
        unseen.sort(Comparator.comparing((Unseen one) -> one.day().orElse(LocalDate.MIN))
                .thenComparing(one -> one.lot().lot()));
        low.sort(Comparator.comparingInt(Low::free)
                .thenComparing(one -> one.item().key()));
        return new Found(
                revision,
                today,
                unseen.size(),
                unseen.stream().limit(SHOWN).toList(),
                low.size(),
                low.stream().limit(SHOWN).toList(),
                gone[0]);
    }

    private static int free(PlantStock stock, ItemRecord item, YearWeek week) {
        return stock.freeBy(item.key(), week);
    }
}
