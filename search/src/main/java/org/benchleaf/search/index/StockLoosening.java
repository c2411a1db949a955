package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// By how much to loosen the wishes for stock and price: fewer, later, in any size, dearer. Each is tried on
/// all plants that meet the wishes for facts.
final class StockLoosening {
    private static final int TRIES = 8;

    private final Need need;
    private final StockColumns stock;
    private final YearWeek week;
    private final long otherFlags;
    private final boolean any;
    private int[] slots = new int[64];
    private int used;

    StockLoosening(Need need, StockColumns stock, YearWeek week) {
        this.need = need;
        this.stock = stock;
        this.week = week;
        long stockBits = 0;
        for (int bit = 0; bit < need.wishes().size(); bit++) {
            if (Basis.of(need.wishes().get(bit).wish()).isEmpty()) {
                stockBits |= 1L << bit | 1L << bit + 32;
            }
        }
        any = stockBits != 0;
        otherFlags = any ? ~stockBits : -1;
    }

    /// How many wishes are about stock and price.
    int wishes() {
        return Long.bitCount(~otherFlags) / 2;
    }

    /// The flags of wishes that are not about stock and price.
    long otherFlags() {
        return otherFlags;
    }

    void take(int slot) {
        if (any) {
            slots = used < slots.length ? slots : Arrays.copyOf(slots, used * 2);
            slots[used++] = slot;
        }
    }

    void add(StockLoosening other) {
        slots = Arrays.copyOf(slots, Math.max(slots.length, used + other.used));
        System.arraycopy(other.slots, 0, slots, used, other.used);
        used += other.used;
    }

    List<Loosening> found(int meetAll) {
        List<Loosening> found = new ArrayList<>();
        if (any && used > meetAll) {
            for (WeighedWish weighed : need.wishes()) {
                if (!weighed.fixed()) {
                    for (List<Wish> way : ways(weighed.wish())) {
                        first(weighed.wish(), way, meetAll).ifPresent(found::add);
                    }
                }
            }
        }
        return found;
    }

    /// The first of several, nearest first, that brings any.
    private Optional<Loosening> first(Wish wish, List<Wish> loosened, int meetAll) {
        for (Wish other : loosened) {
            int more = meeting(wish, other) - meetAll;
            if (more > 0) {
                return Optional.of(new Loosening(wish, other, more));
            }
        }
        return Optional.empty();
    }

    /// Ways to loosen a wish, the nearest of each way first.
    private List<List<Wish>> ways(Wish wish) {
        return switch (wish) {
            case Wish.InStock inStock when priceIsFixed() -> List.of();
            case Wish.InStock(int count, var size, var by) -> {
                List<List<Wish>> ways = new ArrayList<>();
                if (count > 1) {
                    ways.add(counts(count, size, by));
                }
                ways.add(weeks(by.orElse(week)).stream()
                        .<Wish>map(later -> new Wish.InStock(count, size, Optional.of(later)))
                        .toList());
                if (size.isPresent()) {
                    ways.add(List.of(new Wish.InStock(count, Optional.empty(), by)));
                }
                yield ways;
            }
            case Wish.AtMostPrice(Money price) -> List.of(prices(price));
            default -> List.of();
        };
    }

    /// Plants that miss a fixed price are gone from the pass, though in another size they might meet it.
    private boolean priceIsFixed() {
        return need.wishes().stream()
                .anyMatch(weighed -> weighed.fixed() && weighed.wish() instanceof Wish.AtMostPrice);
    }

    private List<Wish> counts(int count, Optional<org.benchleaf.shared.stock.StockSize> size, Optional<YearWeek> by) {
        int code = size.map(stock::sizeCode).orElse(StockWish.ANY);
        StockWish.Enough enough = new StockWish.Enough(stock.mostOf(code, StockColumns.week(by.orElse(week))), count);
        TreeSet<Integer> most = new TreeSet<>();
        for (int i = 0; i < used; i++) {
            int best = enough.most(slots[i]);
            if (best > 0 && best < count) {
                most.add(best);
            }
        }
        return most.descendingSet().stream()
                .limit(TRIES)
                .<Wish>map(fewer -> new Wish.InStock(fewer, size, by))
                .toList();
    }

    private List<YearWeek> weeks(YearWeek by) {
        Lots lots = stock.lots();
        TreeSet<Integer> later = new TreeSet<>();
        for (int i = 0; i < used; i++) {
            for (int lot = stock.start(slots[i]); lot < stock.end(slots[i]); lot++) {
                if (lots.ready()[lot] > StockColumns.week(by)) {
                    later.add(lots.ready()[lot]);
                }
            }
        }
        return later.stream()
                .limit(TRIES)
                .map(number -> new YearWeek(number / 100, number % 100))
                .toList();
    }

    private List<Wish> prices(Money price) {
        StockWish.Cheap cheap =
                (StockWish.Cheap) StockWish.of(new Wish.AtMostPrice(price), Occasion.of(need, week), stock);
        TreeSet<Long> dearer = new TreeSet<>();
        for (int i = 0; i < used; i++) {
            long found = cheap.price(slots[i]);
            if (found > price.minor() && found < Long.MAX_VALUE) {
                dearer.add(found);
            }
        }
        return dearer.stream()
                .limit(TRIES)
                .<Wish>map(minor -> new Wish.AtMostPrice(new Money(minor, price.currency())))
                .toList();
    }

    /// How many of the plants meet all wishes for stock and price with one in the place of another.
    private int meeting(Wish wish, Wish other) {
        List<WeighedWish> wishes = need.wishes().stream()
                .map(weighed -> weighed.wish().equals(wish) ? new WeighedWish(other, weighed.weight(), false) : weighed)
                .toList();
        Occasion occasion = Occasion.of(new Need(wishes), week);
        boolean[] met = new boolean[used];
        Arrays.fill(met, true);
        for (WeighedWish weighed : wishes) {
            Optional<StockWish> ofStock = StockWish.of(weighed.wish(), occasion, stock);
            for (int i = 0; i < used && ofStock.isPresent(); i++) {
                met[i] &= Outcome.isMet(ofStock.get().outcome(slots[i]));
            }
        }
        int count = 0;
        for (boolean one : met) {
            count += one ? 1 : 0;
        }
        return count;
    }
}
