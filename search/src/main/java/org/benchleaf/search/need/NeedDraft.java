package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Shipment;

/// What was made of a sentence so far.
final class NeedDraft {
    private final List<Part> parts = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final List<OtherReading> others = new ArrayList<>();
    private Taken.StockPart stock = Taken.StockPart.NONE;
    private Taken.Manner next = Taken.Manner.PLAIN;
    private boolean runOn;

    void take(String words, Taken taken) {
        runOn = false;
        notes.addAll(taken.notes());
        switch (taken.manner()) {
            case PERHAPS_AFTER, MUST_AFTER, STRONG_AFTER -> next = taken.manner();
            case PERHAPS_BEFORE -> changeLast(words, WordPhrases::preferred);
            case STRONG_BEFORE -> changeLast(words, WordPhrases::stressed);
            case PLAIN -> {
                stock = stock.or(taken.stock());
                taken.others().forEach(other -> others.add(new OtherReading(words, other)));
                List<WeighedWish> wishes = taken.wishes().stream()
                        .map(wish -> weighed(wish, taken.weight()))
                        .toList();
                parts.add(new Part(words, wishes, !taken.stock().isNothing()));
                next = Taken.Manner.PLAIN;
            }
        }
    }

    private void changeLast(String words, UnaryOperator<WeighedWish> change) {
        if (!parts.isEmpty()) {
            parts.add(parts.removeLast().with(words, change));
        }
    }

    private WeighedWish weighed(Wish wish, double weight) {
        WeighedWish usual = WeighedWish.of(wish);
        WeighedWish weighed = new WeighedWish(wish, weight, usual.fixed());
        return switch (next) {
            case PERHAPS_AFTER -> WordPhrases.preferred(weighed);
            case MUST_AFTER -> weighed.fixed(true);
            case STRONG_AFTER -> WordPhrases.stressed(weighed);
            default -> weighed;
        };
    }

    /// A word that was not understood; neighbours are kept together, for they may be a name.
    void leave(String word) {
        if (runOn) {
            left.add(left.removeLast() + " " + word);
        } else {
            left.add(word);
        }
        runOn = true;
    }

    void breakOff() {
        runOn = false;
    }

    NeedReading reading() {
        WeighedWish inStock = WeighedWish.of(new Wish.InStock(stock.count().orElse(1), stock.size(), stock.by()));
        Map<Wish, WeighedWish> wishes = new LinkedHashMap<>();
        List<Understood> understood = new ArrayList<>();
        for (Part part : parts) {
            List<WeighedWish> meant = part.stock()
                    ? List.of(inStock)
                    : part.wishes().stream().map(this::dated).toList();
            for (WeighedWish wish : meant) {
                if (wishes.containsKey(wish.wish()) || wishes.size() < NeedQuery.MOST_WISHES) {
                    wishes.putIfAbsent(wish.wish(), wish);
                    understood.add(new Understood(part.words(), wish));
                } else {
                    left.add(part.words());
                }
            }
        }
        for (Understood one : understood) {
            if (one.wish().freed()) {
                notes.add(new Note("freed", one.words(), ""));
            }
        }
        nativeThere(understood);
        return new NeedReading(new Need(List.copyOf(wishes.values())), understood, left, notes, others);
    }

    /// `native plants in Ohio`: the place may be where they are native.
    private void nativeThere(List<Understood> understood) {
        boolean anywhere =
                understood.stream().anyMatch(one -> one.wish().wish().equals(new Wish.NativeTo(Optional.empty())));
        for (Understood one : understood) {
            if (anywhere && one.wish().wish() instanceof Wish.ShipTo(var shipment)) {
                Wish there = new Wish.NativeTo(Optional.of(shipment.to().region()));
                others.add(new OtherReading(one.words(), List.of(there)));
            }
        }
    }

    /// What is shipped leaves in the week it must be ready by.
    private WeighedWish dated(WeighedWish wish) {
        return wish.wish() instanceof Wish.ShipTo(var shipment) && stock.by().isPresent()
                ? new WeighedWish(
                        new Wish.ShipTo(
                                new Shipment(shipment.to(), stock.by().get().monday(), shipment.from())),
                        wish.weight(),
                        wish.fixed())
                : wish;
    }

    /// A run of words and what it asks; the wish for stock is put together at the end.
    private record Part(String words, List<WeighedWish> wishes, boolean stock) {
        Part with(String more, UnaryOperator<WeighedWish> change) {
            return new Part(words + " " + more, wishes.stream().map(change).toList(), stock);
        }
    }
}
