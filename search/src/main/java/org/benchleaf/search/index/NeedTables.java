package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;

/// A need made ready for passes: a table a wish, shared by all threads of one answer.
final class NeedTables {
    private final Dictionaries dictionaries;
    private final StockColumns stock;
    private final Need need;
    private final Set<Facet> facets;
    private final YearWeek week;
    private final Occasion occasion;
    private final byte[] standings;
    private final boolean ownIsCounted;
    private final List<WishTable> tables = new ArrayList<>();
    private final List<WishTable> fixed = new ArrayList<>();
    private final List<WishTable> free = new ArrayList<>();

    NeedTables(StockColumns stock, Dictionaries dictionaries, Need need, Set<Facet> facets, YearWeek week) {
        this.dictionaries = dictionaries;
        this.stock = stock;
        this.need = need;
        this.facets = facets;
        this.week = week;
        this.occasion = Occasion.of(need, week);
        this.standings = stock.standings(StockColumns.week(week));
        int own = FacetPass.ownOfAny(facets, need.wishes());
        ownIsCounted = Integer.bitCount(own) <= Rank.MOST_OWN;
        for (int bit = 0; bit < need.wishes().size(); bit++) {
            WeighedWish wish = need.wishes().get(bit);
            boolean aside = ownIsCounted && (own >>> bit & 1) != 0;
            WishTable table = WishTable.of(wish, aside, occasion, dictionaries, stock);
            tables.add(table);
            (wish.fixed() ? fixed : free).add(table);
        }
    }

    /// In the order of the wishes.
    List<WishTable> tables() {
        return tables;
    }

    /// Those of wishes that are never given up: they say who is gone through at all.
    List<WishTable> fixed() {
        return fixed;
    }

    /// Those of all other wishes.
    List<WishTable> free() {
        return free;
    }

    /// Whether sums tell how many wishes are missed that facets set aside; very long needs have too many of them.
    boolean ownIsCounted() {
        return ownIsCounted;
    }

    /// What can be had of each slot at all; the better the higher.
    byte[] standings() {
        return standings;
    }

    FacetPass newFacets() {
        return new FacetPass(facets, need.wishes(), dictionaries, stock, occasion);
    }

    LoosenPass newLoosen() {
        return new LoosenPass(need, dictionaries, stock, week);
    }
}
